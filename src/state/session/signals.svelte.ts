import type { Memory } from './remembered.ts';

type Note = { atSeconds: number; hertz: number; lasts: number };

/** Beeps and buzzes, planned ahead so that a slow page does not delay them. */
export class Signals {
	sound = $state(true);
	vibration = $state(true);
	#memory: Memory;
	#context: AudioContext | undefined;
	#planned: OscillatorNode[] = [];
	#timers: ReturnType<typeof setTimeout>[] = [];

	constructor(memory: Memory) {
		this.#memory = memory;
	}

	load(): void {
		this.sound = this.#memory.get('sound') ?? true;
		this.vibration = this.#memory.get('vibration') ?? true;
	}

	set(which: 'sound' | 'vibration', on: boolean): void {
		this[which] = on;
		this.#memory.set(which, on);
		if (!on) this.silence();
	}

	/** Count-in ticks, a long tone at the start, and a double one at the target. */
	planHang(countIn: number, target: number | null): void {
		const notes: Note[] = [];
		for (let left = Math.min(3, countIn); left > 0; left--) {
			notes.push({ atSeconds: countIn - left, hertz: 660, lasts: 0.08 });
		}
		notes.push({ atSeconds: countIn, hertz: 880, lasts: 0.35 });
		if (target !== null) {
			notes.push({ atSeconds: countIn + target, hertz: 990, lasts: 0.2 });
			notes.push({ atSeconds: countIn + target + 0.3, hertz: 990, lasts: 0.4 });
		}
		this.#plan(notes);
	}

	/** One soft tone when the rest is over. */
	planRest(seconds: number): void {
		if (seconds > 0) this.#plan([{ atSeconds: seconds, hertz: 520, lasts: 0.4 }]);
	}

	silence(): void {
		for (const node of this.#planned) node.stop();
		for (const timer of this.#timers) clearTimeout(timer);
		this.#planned = [];
		this.#timers = [];
	}

	#plan(notes: readonly Note[]): void {
		this.silence();
		if (this.vibration && 'vibrate' in navigator) {
			this.#timers = notes.map(({ atSeconds, lasts }) =>
				setTimeout(() => navigator.vibrate(lasts * 1000), atSeconds * 1000)
			);
		}
		if (!this.sound || typeof AudioContext === 'undefined') return;
		// Opening the sound device takes a while: the tap’s own paint goes first.
		const planned = performance.now();
		this.#timers.push(
			setTimeout(() => this.#play(notes, (performance.now() - planned) / 1000), 30)
		);
	}

	#play(notes: readonly Note[], late: number): void {
		// Made after a tap: before one, browsers let no page sound.
		this.#context ??= new AudioContext();
		void this.#context.resume();
		const { currentTime, destination } = this.#context;
		this.#planned = notes.map(({ atSeconds, hertz, lasts }) => {
			const node = this.#context!.createOscillator();
			const gain = this.#context!.createGain();
			const from = currentTime + Math.max(0, atSeconds - late);
			gain.gain.setValueAtTime(0, from);
			gain.gain.linearRampToValueAtTime(0.25, from + 0.01);
			gain.gain.setValueAtTime(0.25, from + lasts);
			gain.gain.linearRampToValueAtTime(0, from + lasts + 0.03);
			node.frequency.value = hertz;
			node.connect(gain).connect(destination);
			node.start(from);
			node.stop(from + lasts + 0.05);
			return node;
		});
	}
}
