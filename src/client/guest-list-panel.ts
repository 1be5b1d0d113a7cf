import { packageOf } from '../views/client/proposal-choice-sides.ts';
import type { ClientTerms } from '../views/client/terms.ts';
import { changeText } from './changed-text.ts';
import { elementIn } from './element-in.ts';
import { guestListCsv, listSums, readGuestList } from './guest-list.ts';
import type { AnswerFile, HandedOver } from './hand-over.ts';
import { say } from './words.ts';

/** Brings the guest list to life: what it says is counted while one types, and its button makes the CSV. */
export function guestListPanel(
  form: HTMLFormElement,
  data: ClientTerms,
  send: (csv: string) => Promise<{ readonly file: AnswerFile; readonly way: HandedOver }>,
): void {
  const { accepted } = data;
  if (!accepted) return;
  const courses = packageOf(data, accepted.choice.package).courses.filter(({ eachGuest }) => eachGuest);
  const field = elementIn(form, 'textarea', HTMLTextAreaElement);
  const read = () => readGuestList(field.value, courses);
  const show = () => {
    const list = read();
    const sums = [
      say('list.guests', { n: list.guests.length }),
      ...listSums(list, courses, accepted.choice.mains),
    ];
    changeText(elementIn(form, '[data-part="sums"]', HTMLElement), sums.join(' '));
    return list;
  };

  form.addEventListener('input', show);
  form.addEventListener('submit', async (event) => {
    event.preventDefault();
    const list = show();
    const problems = list.guests.length === 0 ? [say('list.empty')] : list.problems;
    changeText(elementIn(form, '[data-part="problem"]', HTMLElement), problems.slice(0, 20).join(' '));
    field.setAttribute('aria-invalid', String(problems.length > 0));
    if (problems.length > 0) {
      field.focus();
      return;
    }
    const { file, way } = await send(guestListCsv(list, courses));
    changeText(
      elementIn(form, '[data-part="done"]', HTMLElement),
      sentListWords(file, way, data.kitchen.name),
    );
    const copy = elementIn(form, '[data-part="copy"]', HTMLAnchorElement);
    URL.revokeObjectURL(copy.href);
    copy.href = URL.createObjectURL(new Blob([file.text], { type: file.type }));
    copy.download = file.name;
    copy.hidden = false;
  });
  show();
}

/** What became of the list, and what is left for the client to do. */
export function sentListWords({ name }: Pick<AnswerFile, 'name'>, way: HandedOver, kitchen: string): string {
  switch (way.by) {
    case 'post':
      return say('list.post', { kitchen });
    case 'mail':
      return say('list.mail', { file: name });
    case 'download':
      return say('list.download', { file: name });
    case 'failed post':
      return say('list.failed', { file: name, why: way.why.replace(/[.\s]+$/, '') });
  }
}
