import { storiesDesk } from './stories-desk.ts';
import type { StoriesAnswer, StoriesRequest } from './stories-messages.ts';

// A message channel lets the page's messages in between two stretches without a timer's delay.
const door = new MessageChannel();
const resting: (() => void)[] = [];
door.port1.onmessage = () => resting.shift()?.();
const pause = (): Promise<void> =>
	new Promise((resolve) => {
		resting.push(resolve);
		door.port2.postMessage(null);
	});

const desk = storiesDesk(
	(answer: StoriesAnswer) => self.postMessage(answer),
	pause,
	() => performance.now()
);

self.addEventListener('message', ({ data }: MessageEvent<StoriesRequest>) => void desk(data));
