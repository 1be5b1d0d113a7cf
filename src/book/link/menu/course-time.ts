import type { CourseTime } from '../../../engine/course/course-time.ts';
import { parseBegins } from '../../../engine/course/parse-begins.ts';
import { parseDuration } from '../../../engine/measure/duration.ts';
import type { PackageText } from '../../../schema/package.ts';
import type { Path } from '../../files/place-of.ts';
import type { Reading } from '../grammar/reading.ts';

/** When a course is served, as far as its package states it; undefined where it states nothing. */
export function linkCourseTime(
  reading: Reading,
  path: Path,
  { begins, lasts }: Pick<PackageText['courses'][number], 'begins' | 'lasts'>,
): Partial<CourseTime> | undefined {
  const after =
    begins === undefined ? undefined : reading.understand([...path, 'begins'], begins, parseBegins);
  const length =
    lasts === undefined ? undefined : reading.understand([...path, 'lasts'], lasts, parseDuration);
  if (after === undefined && length === undefined) return undefined;
  return { ...(after !== undefined && { after }), ...(length !== undefined && { lasts: length }) };
}
