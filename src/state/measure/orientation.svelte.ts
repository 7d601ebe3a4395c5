import type { Measured } from '#core/measure/measured.ts';
import { tiltFromOrientation } from '#core/measure/slope.ts';
import { degreesToRadians } from '#core/units/angle.ts';

type AskingEvent = typeof DeviceOrientationEvent & {
	requestPermission?: () => Promise<'granted' | 'denied'>;
};

/** A phone at rest sends no news, so the last reading is taken again this often. */
const EVERY_MS = 50;
const KEPT_SECONDS = 4;
const WAIT_MS = 2000;

/** The phone's own level: asked for at a tap, then read until the page is left. */
export class Orientation {
	phase = $state<'off' | 'waiting' | 'live' | 'silent' | 'refused'>('off');
	/** Pitch of the phone's long side above the horizontal, rad, as it reads just now. */
	angle = $state<number | null>(null);
	/** What the phone reads on a level surface; null: it is trusted. */
	zero = $state.raw<Measured | null>(null);
	#samples: { time: number; angle: number }[] = [];
	#last: number | null = null;
	#timer: ReturnType<typeof setInterval> | undefined;
	#deadline: ReturnType<typeof setTimeout> | undefined;

	async start(): Promise<void> {
		if (this.phase === 'waiting' || this.phase === 'live') return;
		this.phase = 'waiting';
		try {
			const asking = (globalThis as { DeviceOrientationEvent?: AskingEvent })
				.DeviceOrientationEvent;
			if (asking?.requestPermission && (await asking.requestPermission()) !== 'granted') {
				this.phase = 'refused';
				return;
			}
		} catch {
			this.phase = 'refused';
			return;
		}
		addEventListener('deviceorientation', this.#hear);
		this.#timer = setInterval(() => this.#sample(), EVERY_MS);
		this.#deadline = setTimeout(() => {
			if (this.phase === 'waiting') this.phase = 'silent';
		}, WAIT_MS);
	}

	stop(): void {
		removeEventListener('deviceorientation', this.#hear);
		clearInterval(this.#timer);
		clearTimeout(this.#deadline);
		this.phase = 'off';
		this.#samples = [];
		this.#last = null;
		this.angle = null;
	}

	/** Readings of the last seconds, in order of time. */
	get samples(): readonly { time: number; angle: number }[] {
		return this.#samples;
	}

	/** Forgets readings so far: the hand that pressed has moved the phone. */
	fresh(): void {
		this.#samples = [];
	}

	#hear = ({ beta, gamma }: DeviceOrientationEvent): void => {
		if (beta === null || gamma === null) return;
		this.#last = tiltFromOrientation({
			beta: degreesToRadians(beta),
			gamma: degreesToRadians(gamma)
		}).along;
		this.phase = 'live';
	};

	#sample(): void {
		if (this.#last === null) return;
		const time = performance.now() / 1000;
		this.#samples = [
			...this.#samples.filter((sample) => sample.time >= time - KEPT_SECONDS),
			{ time, angle: this.#last }
		];
		this.angle = this.#last;
	}
}
