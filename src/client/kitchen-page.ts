import { startNowNext } from './now-next.ts';
import { startOpenParts } from './open-parts.ts';
import { startTicks } from './ticks.ts';

startTicks();
startNowNext();
startOpenParts();
// Words that unfold later may need a font that is not here yet, and there may be no network by then.
for (const face of document.fonts) face.load().catch(() => undefined);
