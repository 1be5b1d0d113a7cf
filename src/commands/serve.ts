import { stat } from 'node:fs/promises';
import { join } from 'node:path';
import type { Day } from '../engine/calendar/day.ts';
import { kitchenSite } from '../serve/kitchen-site.ts';
import { type ServedSites, serveSites } from '../serve/serve-sites.ts';
import { type Call, type Command, wrongCall } from './command.ts';
import { todayFor } from './today.ts';

/** Serves both sites on this machine until it is told to stop. */
export const command: Command = {
  summary: 'serve the built sites on this machine, and take acceptances in',
  usage: '[--port NUMBER] [--private-port NUMBER] [--host ADDRESS]',
  options: {
    port: { type: 'string', value: 'NUMBER', summary: 'where clients’ pages are (default 4321)' },
    'private-port': {
      type: 'string',
      value: 'NUMBER',
      summary: 'where the kitchen’s pages are, for this machine alone (default 4322)',
    },
    host: {
      type: 'string',
      value: 'ADDRESS',
      summary: 'the address clients reach this machine by (default 127.0.0.1: this machine alone)',
    },
  },
  async run(call) {
    const { port = '4321', 'private-port': privatePort = '4322', host = '127.0.0.1' } = call.flags;
    if (call.args.length > 0) return wrongCall(call, `serve takes no words, and '${call.args[0]}' is one.`);
    for (const [flag, value] of Object.entries({ port, 'private-port': privatePort }))
      if (!isPort(String(value)))
        return wrongCall(call, `'--${flag}' is a number from 0 to 65535, and '${value}' is not.`);
    if (port === privatePort && port !== '0')
      return wrongCall(call, 'The private pages need a port of their own: give another with --private-port.');
    if (host === '') return wrongCall(call, "'--host' needs an address, such as 127.0.0.1.");
    if (!(await isFolder(join(call.outDir, 'public')))) {
      call.complain(`There is nothing to serve in ${call.outDir} yet; run build first.`);
      return 1;
    }
    const site = kitchenSite(call.contentDir);
    if (site === null) call.complain('kitchen.yaml cannot be read (see check); what was built is served.');
    const stopped = untilStopped();
    const sites = await started(call, {
      site: site ?? undefined,
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
      call.write(`The kitchen’s pages, for this machine alone: ${privateUrl}kitchen/`);
      call.write('Stop with Ctrl-C.');
    }
    if (!/^(?:127\.|localhost$|::1$)/.test(String(host)))
      call.complain(
        'This goes out without encryption: beyond your own network, put a server with TLS in front of it.',
      );
    await stopped;
    await sites.close();
    return 0;
  },
};

async function started(
  call: Call,
  where: { site: string | undefined; host: string; port: number; privatePort: number },
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
        call.complain(
          `Port ${port} may not be used by you; give one above 1023 with ${flagOf(port, where)}.`,
        );
        return 1;
      case 'EADDRNOTAVAIL':
      case 'ENOTFOUND':
      case 'EAI_AGAIN':
        return wrongCall(call, `'--host ${where.host}' is no address of this machine.`);
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
