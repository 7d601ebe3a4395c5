/** A list of numbers that grows in place, for results whose length is not known beforehand. */
export class Growing {
	values = new Float64Array(4096);
	size = 0;
	push(value: number): void {
		if (this.size === this.values.length) {
			const wider = new Float64Array(2 * this.size);
			wider.set(this.values);
			this.values = wider;
		}
		this.values[this.size++] = value;
	}
}
