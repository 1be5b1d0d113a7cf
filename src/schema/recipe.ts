import { z } from 'zod';
import { DISH_ROLES } from '../engine/course/dish-role.ts';
import { COOKED_AS } from '../engine/food/recipe.ts';
import { byId, commaLine, line, list, mappingOf, oneOf, orPlain, prose, yesNo } from './text-fields.ts';

const recipeLineSchema = orPlain(
  'amount',
  z.strictObject({
    amount: line(
      'for one batch: weights, volumes and cut pieces (cloves, leaves, slices) of the food made ready as the line says (edible portion), whole pieces, heads, bunches, ears and packs as bought; to say otherwise write `potato, as purchased: 14 lb` or `8 trimmed heads`',
      '14 lb',
    ),
    note: line('a word to the cook', 'cold').optional(),
  }),
);

const stepSchema = orPlain(
  'do',
  z.strictObject({
    do: prose('what to do'),
    when: line(
      'the day: `2 days before`, `the day before`, `on the day`, `at serving`; default: on the day',
      '1 day before',
    ).optional(),
    station: line('which of the kitchen’s stations does it', 'stove'),
    'hands-on': line(
      'time at work, for all of it or `per batch`, which follows the batches cooked; default: none',
      '20 min per batch',
    ).optional(),
    unattended: line('time it looks after itself; default: none', '30 min').optional(),
    'cook to': line(
      'temperature to reach inside, and where it matters how long it is held; default: none is asked',
      '165 °F, or 130 °F for 112 min',
    ).optional(),
  }),
);

const packSchema = orPlain(
  'serve',
  z.strictObject({
    chill: line('container to chill it in, shallow', 'shallow-pan').optional(),
    carry: line('container to carry it in', 'full-pan-4').optional(),
    serve: line('container on the line', '24 pieces per half-sheet').optional(),
  }),
);

/** The data on top of recipes/<id>.mdx; the cook's notes follow below it. */
export const recipeSchema = z.strictObject({
  name: line('how menus and cards call it', 'Warm potato salad'),
  card: line(
    'its short word on place cards and tables, up to 14 characters; default: the noun of its name, else all of it',
    'barley',
  ).optional(),
  makes: list(
    'what a batch makes; further entries say the same in other units, and so convert the finished food',
    '50 servings, 13 lb',
  ),
  batches: oneOf(
    ['exact', 'half', 'whole'],
    'to what the batches cooked are rounded up; default: exact',
  ).optional(),
  ingredients: mappingOf(
    recipeLineSchema,
    'ingredient or recipe id, after a comma how it is prepared → the amount for one batch',
  ),
  without: byId(
    commaLine('for which needs', 'vegan, milk'),
    'item of a line → the needs for which it can be left out; such portions are made apart',
  ).optional(),
  swap: byId(
    commaLine(
      'what is taken instead and for which needs; a further one after a semicolon',
      'corn-bread for no gluten',
    ),
    'item of a line → the ingredient or recipe taken instead, in the same amount, for which needs; such portions are made apart',
  ).optional(),
  'served with': list(
    'recipes of its lines that travel and are given out beside it, in their own containers; default: none',
    'dill-yogurt',
  ).optional(),
  steps: z.array(stepSchema).min(1).max(60).meta({ description: 'the work, in order' }),
  keeps: line(
    'how long it keeps finished, under its `hold`; default: not stated, and labels leave the use-by blank',
    '3 days',
  ).optional(),
  hold: oneOf(['hot', 'cold', 'frozen', 'room'], 'how it is kept until served'),
  reheat: yesNo('whether it is reheated to be served; default: no').optional(),
  pack: packSchema.meta({ description: 'containers by stage' }).optional(),
  finish: line(
    'how to finish it at the place, for the label',
    'Toss with the herbs just before service.',
  ).optional(),
  role: oneOf(
    DISH_ROLES,
    'what it is in a course wherever a package does not state it; default: what the course tells, and `check` asks where that decides who is fed',
  ).optional(),
  'contains raw': yesNo(
    'whether it holds raw or undercooked animal food, of which the client is told; default: no',
  ).optional(),
  'cooked as': oneOf(
    COOKED_AS,
    'what is done to its raw meat, fish or eggs that changes how hot they have to get; default: pieces as they are, eggs for more than one order',
  ).optional(),
  'temperature control': yesNo(
    'no: safe at room temperature when finished, as bread, dry spice and coffee are; default: yes, it is kept hot or cold to be safe',
  ).optional(),
});

/** A recipe as its file writes it. */
export type RecipeText = z.infer<typeof recipeSchema>;
