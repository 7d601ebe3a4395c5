import { mechanisms } from '#reference/mechanisms.ts';

/** Which mechanisms the person still holds possible: all of them until one is unticked. */
class BeliefState {
	ruledOut = $state.raw<readonly string[]>([]);

	readonly possible = $derived(mechanisms.filter(({ key }) => !this.ruledOut.includes(key)));

	has(key: string): boolean {
		return !this.ruledOut.includes(key);
	}

	set(key: string, possible: boolean): void {
		const rest = this.ruledOut.filter((other) => other !== key);
		this.ruledOut = possible ? rest : [...rest, key];
	}

	all(): void {
		this.ruledOut = [];
	}

	none(): void {
		this.ruledOut = mechanisms.map(({ key }) => key);
	}
}

export const beliefs = new BeliefState();
