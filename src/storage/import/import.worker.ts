import { answer } from './messages.ts';
import type { Reply, Request } from './messages.ts';

addEventListener('message', ({ data }: MessageEvent<Request>) => {
	answer(data, (reply: Reply) => postMessage(reply));
});
