import { z } from 'zod';
import { line, mappingOf, prose } from './text-fields.ts';

const fact = (meaning: string, example: string) =>
  line(`${meaning}; default: not asked yet`, example).optional();

/** site-sheets/<id>.yaml: a place where the kitchen works, for every event there. No client ever sees more of it than name and address. */
export const siteSheetSchema = z.strictObject({
  name: line('its name; clients read it', 'Old Ropeworks'),
  address: line('where it is; clients read it; default: not stated', '12 Quay Lane').optional(),
  power: fact('circuits for the kitchen, or none', 'two 20 A circuits beside the loading door'),
  water: fact('yes or no, then what kind', 'yes, one cold tap'),
  'cold space': fact('yes or no, then how much', 'yes, one shelf of the bar refrigerator'),
  ovens: fact('how many, or none', 'none'),
  burners: fact('how many, or none', 'two gas rings'),
  cover: fact('yes or no: a roof over where food is cooked and served', 'yes, the hall'),
  surface: fact('what the kitchen stands on', 'plank floor, uneven near the doors'),
  stairs: fact(
    'how many steps there are between van and kitchen, or none',
    '14 steps, freight elevator beside them',
  ),
  'way in': fact('where the van gets in, from when, and how wide it is', 'yard gate on Quay Lane, from noon'),
  parking: fact('where the van stands during the event', 'two places in the yard'),
  trash: fact('where trash, gray water and grease go', 'we take it all home'),
  contact: fact('who opens the door', 'Orsolya Tamm, caretaker'),
  phone: fact('the telephone number of that person', '555-0153'),
  more: mappingOf(
    z.string().min(1).max(500),
    'anything else the crew should know, a name for each; default: nothing',
  ).optional(),
  photos: mappingOf(
    line('what it shows', 'The yard gate from Quay Lane'),
    'file in the content folder → what it shows; default: none',
  ).optional(),
  notes: prose('what to remember from the last event there; default: nothing').optional(),
});

/** A site sheet as its file writes it. */
export type SiteSheetText = z.infer<typeof siteSheetSchema>;
