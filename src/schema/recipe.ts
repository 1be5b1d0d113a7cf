import { z } from 'zod';
import { DISH_ROLES } from '../engine/course/dish-role.ts';
import { COOKED_AS } from '../engine/food/recipe.ts';
import { byId, commaLine, line, list, mappingOf, oneOf, orPlain, prose, yesNo } from './text-fields.ts';

const recipeLineSchema = orPlain(
  'amount',
  z.strictObject({
    amount: line(
      'for one batch: weights, volumes and cut pieces (cloves, leaves, slices) after the prep on the line (EP, edible portion); whole pieces, heads, bunches, ears and packs as purchased (AP); to override that, write `potato, as purchased: 14 lb` or `8 trimmed heads`',
      '14 lb',
    ),
    note: line('a note to the cook', 'cold').optional(),
  }),
);

const stepSchema = orPlain(
  'do',
  z.strictObject({
    do: prose(
      'what to do; a number in braces is for one batch and is multiplied by the batches cooked: `fold {40} papers`, `add {2 cups} of water`',
    ),
    when: line(
      'the day: `2 days before`, `the day before`, `on the day`, `at serving`; `on the day only`: however full the day is, on no other; default: on the day',
      '1 day before',
    ).optional(),
    station: line('the kitchen station that does it', 'stove'),
    skill: line(
      'the skill it takes, one of the crew’s `skills`: one of those at it has it; default: none',
      'pastry',
    ).optional(),
    'hands-on': line(
      'hands-on time, in all or `per batch`, which follows the batches cooked; default: none',
      '20 min per batch',
    ).optional(),
    unattended: line('unattended time; default: none', '30 min').optional(),
    'cook to': line(
      'temperature to reach inside and, where it matters, how long to hold it; default: none',
      '165 °F, or 130 °F for 112 min',
    ).optional(),
    at: oneOf(
      ['kitchen', 'place'],
      'where it is done: in the kitchen or at the event’s place; default: a step `at serving` at the place, any other in the kitchen',
    ).optional(),
    rest: line(
      'the least time from its end to the next step: to rest, cool or set; default: none',
      '10 min',
    ).optional(),
    'use within': line(
      'the most time from its end to the beginning of the next step; default: any',
      '1 h',
    ).optional(),
    uses: list(
      'which of the recipe’s lines it takes, by their names, so that those are ready by then and need not be before; default: the first step takes all of them',
      'beet, goat cheese',
    ).optional(),
    waves: yesNo(
      'yes: at the place, the first guests may be served while the rest still cooks; default: no, all of it is ready first',
    ).optional(),
  }),
);

const packSchema = orPlain(
  'serve',
  z.strictObject({
    chill: line('shallow container to chill it in', 'shallow-pan').optional(),
    carry: line('container to carry it in', 'full-pan-4').optional(),
    serve: line('container on the line', '24 pieces per half-sheet').optional(),
  }),
);

/** The data on top of recipes/<id>.mdx; the cook's notes follow below it. */
export const recipeSchema = z.strictObject({
  name: line('its name on menus and cards', 'Slow barley with mushrooms'),
  card: line(
    'its short word on place cards and tables, up to 14 characters; default: the main word of its name, or its full name',
    'barley',
  ).optional(),
  makes: list(
    'what a batch makes; more entries give the same batch in other units, and so convert the finished food',
    '50 servings, 13 lb',
  ),
  batches: oneOf(
    ['exact', 'half', 'whole'],
    'what the number of batches is rounded up to; default: exact',
  ).optional(),
  ingredients: mappingOf(
    recipeLineSchema,
    'ingredient or recipe id, after a comma how it is prepared → the amount for one batch',
  ),
  without: byId(
    commaLine('for which needs', 'vegan, milk'),
    'item of a line → the needs it can be left out for; those portions are made separately',
  ).optional(),
  swap: byId(
    commaLine(
      'the substitute and the needs it is for; put a second one after a semicolon',
      'corn-bread for no gluten',
    ),
    'item of a line → the ingredient or recipe that replaces it, in the same amount, and the needs it is for; those portions are made separately',
  ).optional(),
  'served with': list(
    'recipes from its lines that travel and are served on the side, in their own containers; default: none',
    'dill-yogurt',
  ).optional(),
  steps: z.array(stepSchema).min(1).max(60).meta({ description: 'the work, in order' }),
  keeps: line(
    'how long it keeps once finished, held as `hold` states; default: not stated, and labels leave the use-by blank',
    '3 days',
  ).optional(),
  hold: oneOf(['hot', 'cold', 'frozen', 'room'], 'how it is kept until served'),
  stands: line(
    'how long it may wait once finished, held as `hold` states, without losing quality; default: 2 h 30 min hot, 4 h at room temperature, cold as long as it keeps',
    '45 min',
  ).optional(),
  chill: orPlain(
    'in all',
    z.strictObject({
      'in all': line('how long it takes to cool from the end of cooking to cold', '3 h'),
      'first stage': line(
        'how long of it until the first temperature that your food code names, 70 °F; default: a third, but no longer than the code allows',
        '50 min',
      ).optional(),
    }),
  )
    .optional()
    .meta({
      description:
        'how long it takes to cool from the end of cooking to cold; default: by how deep it is in its `chill` container',
      examples: ['3 h'],
    }),
  reheat: yesNo('whether it is reheated to be served; default: no').optional(),
  pack: packSchema.meta({ description: 'containers by stage' }).optional(),
  finish: line(
    'how to finish it on site, for the label; a number in braces is for one batch',
    'Toss with the herbs just before service.',
  ).optional(),
  role: oneOf(
    DISH_ROLES,
    'its role in a course unless a package states it; default: what the course implies, and `check` asks where that decides who is fed',
  ).optional(),
  'contains raw': yesNo(
    'whether it contains raw or undercooked animal food, which the client is told; default: no',
  ).optional(),
  'cooked as': oneOf(
    COOKED_AS,
    'what is done to its raw meat, fish or eggs that changes how hot they must get; default: whole pieces, and eggs for more than one order',
  ).optional(),
  'temperature control': yesNo(
    'no: safe at room temperature when finished, like bread, dry spices and coffee; default: yes, it must be kept hot or cold',
  ).optional(),
});

/** A recipe as its file writes it. */
export type RecipeText = z.infer<typeof recipeSchema>;
