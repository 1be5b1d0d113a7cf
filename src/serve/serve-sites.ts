import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import type { FastifyInstance } from 'fastify';
import type { Day } from '../engine/calendar/day.ts';
import { wordsIn } from '../words/words-in.ts';
import { addAcceptanceRoute } from './acceptance-route.ts';
import { issuedOffers } from './issued-offers.ts';
import { LIMITS, type Limits } from './limits.ts';
import { newServer } from './new-server.ts';
import { answerLoopbackNamesOnly } from './own-name.ts';
import { receiver } from './receive.ts';
import { serveFolder } from './static-files.ts';

/** What is served, and where. Port 0 takes any that is free. */
export interface ServeOptions {
  /** The folder that `build` fills: its `public` and its `private` half go to two ports. */
  readonly outDir: string;
  readonly contentDir: string;
  /** The kitchen's `site`, whose pages may post acceptances here; undefined where it has none. */
  readonly site: string | undefined;
  /** The kitchen's, in whose language senders are told what no offer's page is named for. */
  readonly locale: string;
  readonly host: string;
  readonly port: number;
  readonly privatePort: number;
  today(timeZone: string): Day;
  /** Told of what comes in. */
  say(sentence: string): void;
  readonly limits?: Limits;
}

/** Two servers that run. */
export interface ServedSites {
  readonly publicUrl: string;
  readonly privateUrl: string;
  /** Lets requests that are under way end, then stops; at the latest after three seconds. */
  close(): Promise<void>;
}

/** Private pages are served to this machine alone. */
const LOOPBACK = '127.0.0.1';

/**
 * Serves the clients' pages with the receiver of acceptances on one port, and the kitchen's pages on another that
 * only this machine reaches. Fails, with neither left running, where a port is taken or the host is not this machine's.
 */
export async function serveSites(options: ServeOptions): Promise<ServedSites> {
  const { outDir, contentDir, site, locale, host, today, say, limits = LIMITS } = options;
  const words = wordsIn(locale);
  const offers = issuedOffers(contentDir);
  await offers.find('');

  const forClients = newServer(limits, words);
  await addAcceptanceRoute(forClients, receiver({ contentDir, offers, locale, today, say }), {
    site,
    limits,
    say: words,
  });
  await serveFolder(forClients, join(outDir, 'public'));

  const forKitchen = newServer(limits, words);
  answerLoopbackNamesOnly(forKitchen, words);
  forKitchen.get('/', (_request, reply) => reply.redirect('/kitchen/'));
  await serveFolder(forKitchen, join(outDir, 'private'));

  const close = async () => {
    await Promise.all([forClients, forKitchen].map(closeSoon));
  };
  try {
    await forClients.listen({ host, port: options.port });
    await forKitchen.listen({ host: LOOPBACK, port: options.privatePort });
  } catch (error) {
    await close();
    throw error;
  }
  return { publicUrl: urlOf(forClients), privateUrl: urlOf(forKitchen), close };
}

async function closeSoon(app: FastifyInstance): Promise<void> {
  const cut = setTimeout(() => app.server.closeAllConnections(), 3_000);
  await app.close();
  clearTimeout(cut);
}

function urlOf({ server }: FastifyInstance): string {
  const { address, family, port } = server.address() as AddressInfo;
  return `http://${family === 'IPv6' ? `[${address}]` : address}:${port}/`;
}
