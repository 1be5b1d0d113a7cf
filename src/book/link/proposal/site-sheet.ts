import { readVenueKit } from '../../../engine/menu/parse-venue-kit.ts';
import { SITE_QUESTIONS, type SiteSheet } from '../../../engine/menu/site-sheet.ts';
import type { SiteSheetText } from '../../../schema/site-sheet.ts';
import type { Reading } from '../grammar/reading.ts';

/** A site sheet; a fact that the plan could use and that cannot be read is told, and a photo that is not there. */
export function linkSiteSheet(
  reading: Reading,
  id: string,
  text: SiteSheetText,
  pictures: ReadonlySet<string>,
): SiteSheet {
  const answers = SITE_QUESTIONS.flatMap((question) => {
    const answer = text[question];
    return answer === undefined ? [] : [[question, answer] as const];
  });
  const facts = new Map<string, string>([...answers, ...Object.entries(text.more ?? {})]);
  for (const { fact, what, wayOut } of readVenueKit(new Map(answers)).unclear)
    reading.say('venue-not-understood', [fact], `${what}, so it counts as not stated`, wayOut);
  const photos = Object.entries(text.photos ?? {}).flatMap(([file, shows]) => {
    if (pictures.has(file)) return [{ file, shows }];
    const what = `there is no picture ${file.slice(0, 120)} in the content folder`;
    reading.say('site-photo-missing', ['photos', file], what, 'put it there, or take the line out', 'key');
    return [];
  });
  return {
    id,
    name: text.name,
    ...(text.address !== undefined && { address: text.address }),
    facts,
    photos,
    ...(text.notes !== undefined && { notes: text.notes }),
  };
}
