/** Files whose every small change must be noticed, and the tests nearest to them. */
export interface Area {
  /** Globs without commas, by which they are joined. */
  readonly mutate: readonly string[];
  readonly tests: readonly string[];
  /**
   * The share of mutants, in hundredths, that the tests must find. What is left are changes that show nowhere: a memory
   * that is not kept, a tie between equals, a text that is trimmed twice, how an error is worded.
   */
  readonly found: number;
}

/** What matters most: who can eat what, what is paid, how much is cooked and bought. */
export const AREAS: Readonly<Record<string, Area>> = {
  allergens: {
    mutate: [
      'src/engine/food/allergen.ts',
      'src/engine/food/allergen-columns.ts',
      'src/engine/food/allergen-law.ts',
      'src/engine/food/allergens-known.ts',
      'src/engine/food/allergens-of.ts',
      'src/engine/food/diets-of.ts',
      'src/engine/food/need.ts',
      'src/engine/food/variant.ts',
      'src/engine/food/batches.ts',
      'src/engine/food/swap-item.ts',
      'src/engine/food/label-order.ts',
      'src/engine/food/explode.ts',
    ],
    tests: [
      'tests/unit/food/*.test.ts',
      'tests/property/{allergens,suits}.test.ts',
      'tests/reference/food/*.test.ts',
    ],
    found: 90,
  },
  money: {
    mutate: ['src/engine/money/*.ts'],
    tests: ['tests/unit/money/*.test.ts', 'tests/property/money.test.ts', 'tests/reference/money/*.test.ts'],
    found: 85,
  },
  quote: {
    mutate: ['src/engine/quote/*.ts'],
    tests: [
      'tests/unit/quote/*.test.ts',
      'tests/property/{quote,menu-floor}.test.ts',
      'tests/reference/money/*.test.ts',
    ],
    found: 90,
  },
  corrections: {
    mutate: [
      'src/offers/corrections/corrections.ts',
      'src/offers/corrections/dishes-now.ts',
      'src/offers/corrections/known-since.ts',
      'src/offers/corrections/statements.ts',
      'src/offers/corrections/told.ts',
      'src/offers/event/dish-difference.ts',
      'src/offers/event/dishes.ts',
      'src/offers/event/recipes.ts',
      'src/offers/offer-in-use.ts',
    ],
    tests: [
      'tests/unit/offers/{corrections-found,dish-difference,dishes-now,offer-in-use,served-recipe,statements,told}.test.ts',
    ],
    found: 88,
  },
  answers: {
    mutate: [
      'src/offers/answers/accept.ts',
      'src/offers/answers/answer-differences.ts',
      'src/offers/answers/client-may.ts',
      'src/offers/answers/read-count-change.ts',
      'src/offers/check-offer.ts',
      'src/offers/event/billed-guests.ts',
      'src/offers/event/confirm.ts',
      'src/offers/event/event-date.ts',
      'src/offers/event/guarantee.ts',
      'src/offers/event/payment.ts',
      'src/offers/event/postpone.ts',
      'src/offers/event/served.ts',
      'src/offers/event/status.ts',
    ],
    tests: [
      'tests/unit/offers/{acceptance-rules,billed-guests,client-may,event-state,event-status,guarantee-rules,money-rules}.test.ts',
    ],
    found: 88,
  },
  // Left: where files can’t be written, words of forms that are too long, and marks before a file that is no JSON.
  'answer files': {
    mutate: [
      'src/offers/answers/acceptance-file-name.ts',
      'src/offers/answers/client-answer.ts',
      'src/offers/answers/make-acceptance.ts',
      'src/offers/answers/make-count-change.ts',
      'src/offers/answers/read-answer.ts',
      'src/offers/answers/read-guest-list.ts',
      'src/offers/answers/refusal.ts',
      'src/offers/digest.ts',
      'src/offers/offer-state.ts',
      'src/offers/problem-words.ts',
      'src/offers/text-refusal.ts',
      'src/offers/write-once.ts',
    ],
    tests: [
      'tests/unit/offers/{offer-state,problem-words,read-answer,write-once}.test.ts',
      'tests/reference/offers/canonical-json.test.ts',
    ],
    found: 77,
  },
  'event facts': {
    mutate: ['cancel', 'day-given', 'deposit-due', 'offered-roles'].map(
      (file) => `src/offers/event/${file}.ts`,
    ),
    tests: ['tests/unit/offers/{day-given,event-status,money-rules,offered-roles}.test.ts'],
    found: 96,
  },
  portions: {
    mutate: ['src/engine/plan/servings/*.ts', 'src/engine/plan/containers/separate-containers.ts'],
    tests: [
      'tests/unit/plan/{assign-needs,coverage,coverage-findings,portions,separate-containers,servings,who-eats,whole-plan}.test.ts',
    ],
    found: 81,
  },
  demand: {
    mutate: ['src/engine/plan/demand/*.ts'],
    tests: [
      'tests/unit/plan/{course-demand,odds,odds-statements,portions}.test.ts',
      'tests/unit/drinks/planned-drinks.test.ts',
    ],
    found: 87,
  },
  amounts: {
    mutate: [
      'src/engine/plan/containers/*.ts',
      'src/engine/plan/purchases/bought.ts',
      'src/engine/plan/purchases/needs.ts',
      'src/engine/plan/purchases/purchases.ts',
      'src/engine/plan/purchases/rounds.ts',
      'src/engine/plan/purchases/uses.ts',
    ],
    tests: [
      'tests/unit/plan/{separate-containers,containers,findings,purchase-needs,purchases,whole-plan}.test.ts',
      'tests/unit/food/as-bought.test.ts',
      'tests/unit/solver/order-for.test.ts',
      'tests/reference/plan/portions-to-pans.test.ts',
    ],
    found: 85,
  },
  orders: {
    mutate: [
      'src/engine/plan/purchases/findings.ts',
      'src/engine/plan/purchases/gap-text.ts',
      'src/engine/plan/purchases/order-alarms.ts',
      'src/engine/plan/purchases/ordered.ts',
      'src/engine/plan/purchases/there-before.ts',
    ],
    tests: [
      'tests/unit/plan/{findings,order-alarms,placed-order,purchases,there-before,whole-plan}.test.ts',
      'tests/unit/solver/order-for.test.ts',
    ],
    found: 81,
  },
  keeping: {
    mutate: [
      'src/engine/plan/safety/*.ts',
      'src/engine/plan/days/cold-room.ts',
      'src/engine/plan/changes/*.ts',
    ],
    tests: [
      'tests/unit/plan/{cold-room,findings,whole-plan}.test.ts',
      'tests/unit/safety/{safety-sheet,time-without-control}.test.ts',
      'tests/unit/events/plan-changes.test.ts',
    ],
    found: 83,
  },
  measure: {
    mutate: ['src/engine/measure/*.ts'],
    tests: [
      'tests/unit/measure/*.test.ts',
      'tests/property/measure.test.ts',
      'tests/reference/measure/*.test.ts',
    ],
    found: 89,
  },
  purchase: {
    mutate: [
      'src/engine/purchase/can-pack.ts',
      'src/engine/purchase/choose-packs.ts',
      'src/engine/purchase/food-cost.ts',
      'src/engine/purchase/order-days.ts',
      'src/engine/purchase/order-model.ts',
      'src/engine/purchase/pack-price.ts',
      'src/engine/purchase/pack-slash.ts',
      'src/engine/purchase/packs-on.ts',
      'src/engine/purchase/parse-pack.ts',
      'src/engine/purchase/price-alarms.ts',
      'src/engine/purchase/settle-order.ts',
      'src/engine/purchase/spoilage.ts',
      'src/engine/purchase/stock.ts',
      'src/engine/purchase/supplier-orders.ts',
      'src/engine/purchase/supplier-sets.ts',
      'src/engine/purchase/usable-packs.ts',
      'src/engine/purchase/weigh-order.ts',
    ],
    tests: [
      'tests/unit/purchase/{choose-packs,order-model,parse-pack,price-alarms,settle-order,stock,supplier-orders,supplier-sets,weigh-order}.test.ts',
      'tests/unit/food/cost.test.ts',
    ],
    found: 88,
  },
  // Measured on every sixth line. Left: bounds that only make the search shorter, and ties.
  'order search': {
    mutate: ['cheapest-cover', 'food-cover', 'food-options', 'join-halves', 'label-queue'].map(
      (file) => `src/engine/purchase/${file}.ts`,
    ),
    tests: ['tests/unit/purchase/{cheapest-cover,food-cover,join-halves,label-queue,order-model}.test.ts'],
    found: 78,
  },
  safety: {
    mutate: ['src/engine/safety/*.ts'],
    tests: [
      'tests/unit/safety/{heat-steps,kitchen-checks,leaves-raw,limit-texts,raw-food,recipe-safety,safety-sheet,service-checks,time-without-control}.test.ts',
      'tests/reference/safety/*.test.ts',
    ],
    found: 93,
  },
  menus: {
    mutate: ['calendar', 'course', 'menu', 'text'].map((folder) => `src/engine/${folder}/*.ts`),
    tests: ['tests/unit/{calendar,course,menu}/*.test.ts', 'tests/unit/text/{counted,visible-text}.test.ts'],
    found: 88,
  },
  odds: {
    mutate: ['src/engine/odds/*.ts'],
    tests: ['tests/unit/odds/readings.test.ts', 'tests/unit/drinks/planned-drinks.test.ts'],
    found: 86,
  },
  // Left: how a line that is read is trimmed, and what no list shows of the recipe that water is poured by.
  drinks: {
    mutate: ['src/engine/drinks/*.ts', 'src/engine/plan/drinks/*.ts'],
    tests: ['tests/unit/drinks/{drink-portions,planned-drinks}.test.ts'],
    found: 91,
  },
  learning: {
    mutate: [
      'src/engine/learning/came-back.ts',
      'src/engine/learning/near-fraction.ts',
      'src/engine/learning/normal-curve.ts',
      'src/engine/learning/proposed-amount.ts',
      'src/engine/learning/sensible-amount.ts',
      'src/engine/learning/share-words.ts',
      'src/engine/learning/student-curve.ts',
    ],
    tests: [
      'tests/unit/learning/{came-back,eaten,near-fraction,sensible-amount}.test.ts',
      'tests/reference/learning/*.test.ts',
    ],
    found: 88,
  },
  // Measured on every third line. Left: how many steps a search takes.
  eaten: {
    mutate: ['src/engine/learning/eaten.ts'],
    tests: ['tests/unit/learning/eaten.test.ts'],
    found: 85,
  },
  'plan money': {
    mutate: ['src/engine/plan/money/*.ts'],
    tests: [
      'tests/unit/plan/event-{costs,money,money-at,money-curve}.test.ts',
      'tests/unit/food/cost.test.ts',
    ],
    found: 87,
  },
  plan: {
    mutate: ['src/engine/plan/*.ts'],
    tests: [
      'tests/unit/plan/{containers,coverage-findings,figure-text,findings,odds,portions,purchase-needs,purchases,servings,whole-plan}.test.ts',
      'tests/unit/exports/batches-text.test.ts',
      'tests/reference/plan/portions-to-pans.test.ts',
    ],
    found: 79,
  },
  'clock told': {
    mutate: [
      'src/engine/plan/clock/day-findings.ts',
      'src/engine/plan/clock/event-timeline.ts',
      'src/engine/plan/clock/event-work.ts',
      'src/engine/plan/clock/timed-steps.ts',
    ],
    tests: ['tests/unit/plan/clock/{day-clock,event-work,told}.test.ts'],
    found: 79,
  },
  load: {
    mutate: ['brought', 'components', 'kit', 'power'].map((file) => `src/engine/plan/load/${file}.ts`),
    tests: ['tests/unit/plan/{brought,components,kit,power}.test.ts'],
    found: 82,
  },
  // Measured on every second line. Left: what stands for food in no container, and carriers nobody has filled.
  carriers: {
    mutate: [
      'carrier-heat',
      'carriers',
      'carriers-out',
      'event-load',
      'food-weight',
      'packed-food',
      'van-load',
    ].map((file) => `src/engine/plan/load/${file}.ts`),
    tests: ['tests/unit/plan/{carrier-heat,carriers,components,event-load,van-load}.test.ts'],
    found: 89,
  },
  // Measured on every second line. Left: lists that are empty either way, and why food is kept for two events at once.
  days: {
    mutate: [
      'cooked-together',
      'crew-text',
      'day-batches',
      'days',
      'hands-on',
      'loads',
      'work-day-moves',
    ].map((file) => `src/engine/plan/days/${file}.ts`),
    tests: ['tests/unit/plan/{cold-room,cooked-together,day-batches,hands-on,loads,work-day-moves}.test.ts'],
    found: 87,
  },
  'clock hours': {
    mutate: ['clashes', 'crew-hours', 'day-chain', 'event-clock', 'vehicle-findings', 'vehicles'].map(
      (file) => `src/engine/plan/clock/${file}.ts`,
    ),
    tests: ['tests/unit/plan/clock/*.test.ts'],
    found: 79,
  },
  'clock work': {
    mutate: [
      'src/engine/plan/clock/chill-time.ts',
      'src/engine/plan/clock/kitchen-steps.ts',
      'src/engine/plan/clock/leaves.ts',
      'src/engine/plan/clock/place-clock.ts',
      'src/engine/plan/clock/place-equipment.ts',
      'src/engine/plan/clock/place-steps.ts',
      'src/engine/plan/clock/prep-problem.ts',
      'src/engine/plan/clock/presence.ts',
      'src/engine/plan/clock/shared-hands.ts',
      'src/engine/plan/clock/throw-away.ts',
      'src/engine/plan/clock/waiting.ts',
    ],
    tests: ['tests/unit/plan/clock/*.test.ts', 'tests/unit/plan/brought.test.ts'],
    found: 69,
  },
  // Measured on every third line, before what chills, departures and presence had tests of their own.
  'clock crew': {
    mutate: [
      'chilling',
      'clock-change',
      'cooling-tasks',
      'departures',
      'earlier-work',
      'has-room',
      'kitchen-presence',
      'later-ways',
      'rota',
      'ways-out',
      'worse',
    ].map((file) => `src/engine/plan/clock/${file}.ts`),
    tests: ['tests/unit/plan/clock/*.test.ts'],
    found: 69,
  },
  // Measured on every fourth line. Which day is tried first shows in how long it takes, and what is left has not been read.
  'clock day': {
    mutate: [
      'day-clock',
      'day-problem',
      'day-resources',
      'prep-clock',
      'schedule',
      'solved',
      'work-ahead',
    ].map((file) => `src/engine/plan/clock/${file}.ts`),
    tests: ['tests/unit/plan/clock/*.test.ts'],
    found: 54,
  },
  'schedule told': {
    mutate: [
      'src/engine/schedule/blocks.ts',
      'src/engine/schedule/left-out.ts',
      'src/engine/schedule/naming.ts',
      'src/engine/schedule/problem.ts',
      'src/engine/schedule/reasons.ts',
    ],
    tests: ['tests/unit/schedule/schedule.test.ts'],
    found: 57,
  },
  // Measured on every eighth line. Left: what makes a schedule later or the search longer, not wrong, which bounds and
  // published instances judge.
  schedule: {
    mutate: [
      'assign-units',
      'begin-ranges',
      'circles',
      'contradictions',
      'energy',
      'first-lists',
      'generate',
      'justify',
      'longest-paths',
      'lower-bounds',
      'mirror-model',
      'model',
      'network',
      'offspring',
      'paths',
      'placement',
      'prepare',
      'priority-lists',
      'profile',
      'random',
      'result',
      'schedule',
      'score',
      'search',
      'temporal-bounds',
    ].map((file) => `src/engine/schedule/${file}.ts`),
    tests: ['tests/unit/schedule/{assign-units,schedule}.test.ts'],
    found: 50,
  },
  issue: {
    mutate: ['src/offers/issue/*.ts'],
    tests: [
      'tests/unit/offers/{dish-terms,instead-of,issue,package-tiers,proposal-terms}.test.ts',
      'tests/unit/food/demo-facts.test.ts',
    ],
    found: 85,
  },
  learned: {
    mutate: ['src/offers/learned/*.ts'],
    tests: ['tests/unit/offers/{eaten-so-far,leftovers-rules}.test.ts'],
    found: 91,
  },
  kitchen: {
    mutate: ['src/engine/kitchen/*.ts'],
    tests: ['tests/unit/kitchen/*.test.ts'],
    found: 73,
  },
  food: {
    mutate: [
      'src/engine/food/as-bought.ts',
      'src/engine/food/card-word.ts',
      'src/engine/food/earlier-recipe.ts',
      'src/engine/food/finished-food.ts',
      'src/engine/food/gluten-free.ts',
      'src/engine/food/is-compound.ts',
      'src/engine/food/made-there.ts',
      'src/engine/food/origin.ts',
      'src/engine/food/parse-card-word.ts',
      'src/engine/food/recipe-called.ts',
      'src/engine/food/recipe.ts',
      'src/engine/food/step-lines.ts',
      'src/engine/food/step-text.ts',
      'src/engine/food/tap-water.ts',
      'src/engine/food/trim.ts',
      'src/engine/food/usual-chill.ts',
      'src/engine/food/usual-stands.ts',
      'src/engine/food/walk.ts',
      'src/engine/food/yield.ts',
    ],
    tests: ['tests/unit/food/*.test.ts', 'tests/reference/food/{edible-to-purchased,whole-pieces}.test.ts'],
    found: 77,
  },
  'guest list': {
    mutate: ['src/offers/guest-list/*.ts'],
    tests: ['tests/unit/offers/{guest-list,guest-list-rules}.test.ts'],
    found: 90,
  },
};

/** Files of the engine and the offers that are not changed, by the reason why. Files of types alone need none. */
export const NOT_MEASURED: Readonly<Record<string, readonly string[]>> = {
  'figures and lists alone: there is no small change to try': [
    'src/engine/alarm-limits.ts',
    'src/engine/food/diet.ts',
    'src/engine/food/ingredient.ts',
  ],
  'every reading ends in it, so that whatever is changed fails every test': ['src/engine/parsed.ts'],
  'only searches of whole orders reach it, and those of one change take minutes': [
    'part-order',
    'pressed-order',
    'price-fraction',
    'supplier-credits',
  ].map((file) => `src/engine/purchase/${file}.ts`),
  'only tests that read whole kitchens from disk reach it, and those of one area take over ten minutes': [
    ...[
      'accepted-offer',
      'as-of',
      'call-changed',
      'clock-facts',
      'crew-dishes',
      'current-event',
      'drinks',
      'fact-file',
      'input-of',
      'record-fact',
      'served-dishes',
      'substitute',
      'swap-dish',
      'swap-ingredient',
    ].map((file) => `src/offers/event/${file}.ts`),
    'src/offers/answers/inbox.ts',
    'src/offers/corrections/record-corrections.ts',
  ],
  'newer than the last measuring': [
    'src/engine/food/step-heat.ts',
    'src/engine/learning/destiny.ts',
    'src/engine/plan/clock/day-changes.ts',
    'src/engine/plan/clock/holding-findings.ts',
    'src/engine/plan/clock/holding-search.ts',
    'src/engine/plan/clock/holding.ts',
    'src/engine/plan/clock/kept-back.ts',
    'src/engine/plan/clock/place-ways.ts',
    'src/engine/plan/clock/stands.ts',
    'src/engine/plan/clock/step-tasks.ts',
    'src/engine/plan/days/holding-room.ts',
    'src/engine/plan/load/counted-drink.ts',
    'src/engine/plan/load/supplies.ts',
    'src/offers/event/broken.ts',
    'src/offers/event/charges.ts',
    'src/offers/event/tip.ts',
  ],
};
