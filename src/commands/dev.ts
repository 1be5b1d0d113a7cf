import { spawn } from 'node:child_process';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { projectDir } from '../build/project-dir.ts';
import type { Command } from './call/command.ts';
import { openBook } from './call/open-book.ts';
import { PUBLIC_PORT } from './call/ports.ts';

export const command: Command = {
  summary: 'show all pages while you edit content or code',
  usage: '[--port NUMBER]',
  options: {
    port: { type: 'string', value: 'NUMBER', summary: `port to show them at (default ${PUBLIC_PORT})` },
  },
  async run(call) {
    const open = await openBook(call);
    if (!open) return 1;
    const astro = createRequire(import.meta.url).resolve('astro/package.json');
    const { port = PUBLIC_PORT } = call.flags;
    const words = ['dev', '--root', projectDir, '--port', String(port)];
    const child = spawn(process.execPath, [join(dirname(astro), 'bin', 'astro.mjs'), ...words], {
      cwd: projectDir,
      stdio: 'inherit',
      env: {
        ...process.env,
        ASTRO_TELEMETRY_DISABLED: '1',
        ASTRO_DEV_BACKGROUND: '0',
        SALVER_CONTENT: call.contentDir,
        SALVER_BODIES: join(projectDir, '.salver', 'bodies', 'dev'),
        SALVER_TODAY: open.today,
      },
    });
    call.complain('The kitchen’s pages are under /kitchen/, printed pages under /print/…; stop with Ctrl-C.');
    return new Promise((done, fail) => child.on('error', fail).on('close', (code) => done(code ?? 0)));
  },
};
