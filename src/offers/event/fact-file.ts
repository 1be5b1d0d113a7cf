import { join } from 'node:path';
import { factFileName } from '../../schema/event-fact.ts';

/** The file of an event's fact under the content folder; `number` counts from 1 in the order written. */
export function factFile(contentDir: string, event: string, number: number, kind: string): string {
  return join(contentDir, 'events', event, factFileName(number, kind));
}
