import { spawn } from 'node:child_process';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { projectDir } from '../build/project-dir.ts';
import type { Command } from './command.ts';
import { openBook } from './open-book.ts';

export const command: Command = {
  summary: 'show all pages while content or code is being changed',
  usage: '[--port NUMBER]',
  options: { port: { type: 'string', value: 'NUMBER', summary: 'where to show them (default 4321)' } },
  async run(call) {
    const open = await openBook(call);
    if (!open) return 1;
    const astro = createRequire(import.meta.url).resolve('astro/package.json');
    const { port } = call.flags;
    const words = ['dev', '--root', projectDir, ...(typeof port === 'string' ? ['--port', port] : [])];
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
    call.complain('The kitchen’s pages begin at /kitchen/, papers at /print/…; stop with Ctrl-C.');
    return new Promise((done, fail) => child.on('error', fail).on('close', (code) => done(code ?? 0)));
  },
};
