import { publish } from '../../../src/build/publish.ts';
import { editionRecord } from './edition.ts';

// Publishes the second edition and kills itself, as a power cut would, after the step named.
const [out, fatal] = process.argv.slice(2);
await publish(
  out!,
  async (scratch) => {
    scratch.write('public/a.txt', 'second');
    scratch.write('private/deep/b.txt', 'second');
    return editionRecord('second');
  },
  (step) => {
    if (step === fatal) process.kill(process.pid, 'SIGKILL');
  },
);
