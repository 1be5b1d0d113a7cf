import { z } from 'zod';
import { byId, line, oneOf, orPlain } from './text-fields.ts';

/** Where a drink's ice is, as content writes it. */
export const ICE_PLACES = ['none', 'glass', 'tub', 'tub and glass'] as const;

/** Who takes a kind of drink. */
const TAKERS = ['everybody', 'adults', 'children'] as const;

const common = {
  share: line('its share of the drinks that are taken', '40 %'),
  children: line(
    'its share of the children’s drinks; default: in proportion to the shares of what is for them',
    '60 %',
  ).optional(),
  ice: oneOf(
    ICE_PLACES,
    'whether ice goes into each glass, or its bottles and cans stand in a tub of ice; default: none',
  ).optional(),
  in: line(
    'the rental it is served in, of those packed per drink; default: none is named',
    'tumbler',
  ).optional(),
};

const kindSchema = orPlain(
  'share',
  z.strictObject({
    ...common,
    glass: line(
      'one drink, in a unit that the recipe makes or converts to; default: 8 fl oz, or 1 of what the recipe makes by the piece',
      '6 fl oz',
    ).optional(),
    for: oneOf(
      TAKERS,
      'who takes it; default: everybody whom the package counts, and adults alone where it holds alcohol',
    ).optional(),
    with: byId(
      line('the amount for one drink', '1 fl oz'),
      'what is served with it: recipe → amount for one drink; default: nothing',
    ).optional(),
    overage: line(
      'extra carried, or the chosen risk, such as “short at most 1 in 50”; default: the kitchen’s for the service style',
      '10 %',
    ).optional(),
  }),
);

const waterSchema = orPlain(
  'share',
  z.strictObject({ ...common, glass: line('one glass; default: 8 fl oz', '8 fl oz').optional() }),
);

/** The drinks of a package or an add-on: how many each guest takes, and of which kinds. */
export const drinksSchema = z.strictObject({
  name: line('the course that they make on the menu; unique in the package', 'Drinks').optional(),
  hours: line('how long they are served; default: the package’s `hours`', '4 hours').optional(),
  'per guest': line(
    'how many drinks one guest takes in the first hour and in each hour after it',
    '2 in the first hour, then 1 per hour',
  ),
  'per child': line('the same for a child; default: as many as any guest', '1 per hour').optional(),
  kinds: byId(kindSchema, 'recipe → its share of the drinks'),
  water: waterSchema.optional().meta({
    description:
      'plain water among the drinks, which is planned with its ice and glasses and is on no menu; default: none',
    examples: ['20 %'],
  }),
});

/** Drinks as a package or an add-on writes them. */
export type DrinksText = z.infer<typeof drinksSchema>;

/** How the kitchen plans all its drinks. */
export const drinksHabitsSchema = z.strictObject({
  ice: line(
    'the ingredient that ice is bought as; default: the kitchen makes its own',
    'bagged-ice',
  ).optional(),
  water: line(
    'the ingredient that plain water is bought as; default: it comes from the tap',
    'spring-water',
  ).optional(),
  'ice per glass': line('ice in one glass, by weight; default: 4 oz', '4 oz').optional(),
  melt: line('share of the ice that melts unused; default: 25 %', '25 %').optional(),
  'stored at': line(
    'how warm drinks are that are put on ice, unless the day is warmer; default: 72 °F',
    '72 °F',
  ).optional(),
  'hot day': z
    .strictObject({
      from: line('a day with this expected high or more is hot; default: 85 °F', '85 °F').optional(),
      more: line('how much more of everything cold guests then drink; default: 25 %', '25 %').optional(),
      melt: line('share of the ice that then melts unused; default: 50 %', '50 %').optional(),
    })
    .optional()
    .meta({ description: 'what a hot day changes', examples: ['{ from: 85 °F, more: 25 % }'] }),
});

/** How the kitchen plans drinks, as kitchen.yaml writes it. */
export type DrinksHabitsText = z.infer<typeof drinksHabitsSchema>;
