import { stat } from 'node:fs/promises';
import { join } from 'node:path';
import type { Day } from '../engine/calendar/day.ts';
import { type ServedSites, serveSites } from '../serve/serve-sites.ts';
import { type ServedKitchen, servedKitchen } from '../serve/served-kitchen.ts';
import { type Call, type Command, wrongCall } from './call/command.ts';
import { PRIVATE_PORT, PUBLIC_PORT } from './call/ports.ts';
import { todayFor } from './call/today.ts';

/** Serves both sites on this machine until it is told to stop. */
export const command: Command = {
  summary: 'serve the built sites on this machine, and receive acceptances',
  usage: '[--port NUMBER] [--private-port NUMBER] [--host ADDRESS]',
  options: {
    port: { type: 'string', value: 'NUMBER', summary: `port of the clients’ pages (default ${PUBLIC_PORT})` },
    'private-port': {
      type: 'string',
      value: 'NUMBER',
      summary: `port of the kitchen’s pages, for this machine only (default ${PRIVATE_PORT})`,
    },
    host: {
      type: 'string',
      value: 'ADDRESS',
      summary: 'the address clients reach this machine at (default 127.0.0.1: this machine only)',
    },
  },
  async run(call) {
    const { port = PUBLIC_PORT, 'private-port': privatePort = PRIVATE_PORT, host = '127.0.0.1' } = call.flags;
    if (call.args.length > 0) return wrongCall(call, `serve takes no arguments, but got '${call.args[0]}'.`);
    for (const [flag, value] of Object.entries({ port, 'private-port': privatePort }))
      if (!isPort(String(value)))
        return wrongCall(call, `'--${flag}' must be a number from 0 to 65535, not '${value}'.`);
    if (port === privatePort && port !== '0')
      return wrongCall(call, 'The private pages need a port of their own: give another with --private-port.');
    if (host === '') return wrongCall(call, "'--host' needs an address, such as 127.0.0.1.");
    if (!(await isFolder(join(call.outDir, 'public')))) {
      call.complain(`There is nothing to serve in ${call.outDir} yet; run build first.`);
      return 1;
    }
    const kitchen = servedKitchen(call.contentDir);
    if (!kitchen) call.complain('kitchen.yaml can’t be read (run check); serving the last build.');
    const stopped = untilStopped();
    const sites = await started(call, {
      ...(kitchen ?? UNKNOWN_KITCHEN),
      host: String(host),
      port: Number(port),
      privatePort: Number(privatePort),
    });
    if (typeof sites === 'number') return sites;
    const { publicUrl, privateUrl } = sites;
    if (call.json) call.write(JSON.stringify({ public: publicUrl, private: privateUrl }));
    else {
      call.write(
        `Clients’ pages: ${publicUrl}proposals/<link>/, acceptances are posted to ${publicUrl}acceptances`,
      );
      call.write(`The kitchen’s pages, for this machine only: ${privateUrl}kitchen/`);
      call.write('Stop with Ctrl-C.');
    }
    if (!/^(?:127\.|localhost$|::1$)/.test(String(host)))
      call.complain(
        'This is not encrypted: outside your own network, run it behind a server that uses HTTPS.',
      );
    await stopped;
    await sites.close();
    return 0;
  },
};

/** What is served of a kitchen that cannot be read: its last build, with answers in American English. */
const UNKNOWN_KITCHEN: ServedKitchen = { site: undefined, locale: 'en-US' };

async function started(
  call: Call,
  where: ServedKitchen & { host: string; port: number; privatePort: number },
): Promise<ServedSites | number> {
  const { contentDir, outDir, complain: say } = call;
  try {
    const today = (zone: string) => todayFor(call, zone) as Day;
    return await serveSites({ ...where, contentDir, outDir, today, say });
  } catch (error) {
    const { code, port } = error as NodeJS.ErrnoException & { port?: number };
    switch (code) {
      case 'EADDRINUSE':
        call.complain(
          `Port ${port} is in use; stop what runs there, or give another with ${flagOf(port, where)}.`,
        );
        return 1;
      case 'EACCES':
        call.complain(`You may not use port ${port}; give one above 1023 with ${flagOf(port, where)}.`);
        return 1;
      case 'EADDRNOTAVAIL':
      case 'ENOTFOUND':
      case 'EAI_AGAIN':
        return wrongCall(call, `'--host ${where.host}' is not an address of this machine.`);
      default:
        throw error;
    }
  }
}

function flagOf(port: number | undefined, where: { privatePort: number }): string {
  return port === where.privatePort ? '--private-port' : '--port';
}

/** Resolves at the first Ctrl-C or request to end; a second one ends the process at once, as ever. */
function untilStopped(): Promise<void> {
  return new Promise((done) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => done());
  });
}

function isPort(text: string): boolean {
  return /^\d{1,5}$/.test(text) && Number(text) <= 65_535;
}

async function isFolder(path: string): Promise<boolean> {
  return stat(path).then(
    (stats) => stats.isDirectory(),
    () => false,
  );
}
