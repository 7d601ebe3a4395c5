import { searchHandler } from './search-handler.ts';
import type { SearchCommand } from './search-messages.ts';

// A channel of our own instead of a timer: browsers make chained timers wait 4 ms each.
const channel = new MessageChannel();
let waiting: (() => void) | undefined;
channel.port1.onmessage = () => waiting?.();

const handle = searchHandler(
	(report) => self.postMessage(report),
	(next) => {
		waiting = next;
		channel.port2.postMessage(undefined);
	}
);

self.onmessage = ({ data }: MessageEvent<SearchCommand>) => handle(data);
