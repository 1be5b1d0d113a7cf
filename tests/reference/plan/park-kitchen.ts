/**
 * A kitchen with one lunch for 100 adults and 20 children in a park that has neither water nor power nor a roof, on a day of
 * 30 °C (86 °F), with drinks for four hours. Small, so that all of it can be worked by hand.
 */
export const PARK_CONTENT: Readonly<Record<string, string>> = {
  'kitchen.yaml': `name: Lantern Kitchen
locale: en-US
currency: USD
measures: us
time zone: America/Chicago
buying: 3 days before
allergens: us
overage: { buffet: 10 % }
set-up: 1 h 30 min
day: { pack: 60 min, load: 30 min, clear: 75 min, unload: 30 min }
places:
  hill-town: { name: Hill Town }
guarantee: { deadline: 7 days before, floor: 90 % }
payments: [30 % when accepted, balance 7 days before]
stations: { bench: Bench, grill: Grill, stove: Stove }
staff:
  cook: { name: Cooks on site, price: 40.00 per hour, pay: 25.00 per hour, one per: { buffet: 60 guests }, hours: 9 hours, cooks: yes }
  server: { name: Servers, price: 36.00 per hour, pay: 22.00 per hour, one per: { buffet: 30 guests }, hours: 9 hours }
containers:
  half-sheet: { name: Lidded half sheet, weighs: 2 lb, holds: 24 pieces, depth: 1 in }
  tub: { name: Lidded tub, weighs: 2 lb, holds: 384 fl oz, depth: 8 in, fill: 85 % }
  urn: { name: Urn, weighs: 20 lb, holds: 5 gal, for: hot, on its own: yes }
equipment:
  field-grill: { name: Field grill, station: grill, travels: yes, holds: 12 half-sheet, heats in: 15 min, burns: 16 oz of propane per hour, fuel comes in: 20 lb, weighs: 70 lb }
  field-burner: { name: Field burner, station: stove, travels: yes, heats in: 5 min, burns: 8 oz of propane per hour, fuel comes in: 20 lb, weighs: 24 lb }
carriers:
  cold-box: { name: Cold box, count: 8, for: cold, holds: "10 half-sheet, 4 tub", size: 25 × 17 × 24 in, weighs: 31 lb, ice pack: 3 lb }
  crate: { name: Crate, count: 4, for: room, holds: 4 tub, size: 24 × 16 × 12 in, weighs: 6 lb }
vehicles:
  van: { name: Van, count: 1, payload: 2600 lb, space: 118 × 54 × 62 in }
drinks: { ice: bagged-ice }
rentals:
  tumbler: { name: Tumblers, amount: 1 each per drink, spare: 10 %, weighs: 6 oz }
  mug: { name: Mugs, amount: 1 each per drink, spare: 10 %, weighs: 12 oz }
  plate: { name: Plates, amount: 1 each per guest, spare: 5 %, weighs: 1 lb }
usual kit: yes
`,
  'suppliers.yaml': 'hill-farm: { name: Hill Farm }\n',
  'prices/hill-farm.csv': `ingredient,pack,price,item number,valid from
lamb-leg,10 lb bag,70.00,L1,2026-01-01
butter-beans,10 lb bag,14.00,B1,2026-01-01
pear-juice,1 gal,9.00,P1,2026-01-01
pear-soda,24 bottles,24.00,S24,2026-01-01
pale-ale,24 bottles,36.00,A24,2026-01-01
bagged-ice,20 lb bag,4.00,I20,2026-01-01
coffee,1 lb,9.00,C1,2026-01-01
milk,1 gal,5.00,M1,2026-01-01
`,
  'ingredients/own.yaml': `lamb-leg: { name: Lamb leg, boned, from: lamb, contains: none, yield: 100 % }
butter-beans: { from: plant, contains: none }
pear-juice: { from: plant, contains: none }
pear-soda: { from: plant, contains: none }
pale-ale: { from: "plant, alcohol", contains: barley }
bagged-ice: { name: Bagged ice, from: water, contains: none, storage: frozen }
coffee: { from: plant, contains: none, storage: dry }
milk: { from: milk, contains: milk }
`.replace('Lamb leg, boned', '"Lamb leg, boned"'),
  'recipes/lamb-skewers.mdx': `---
name: Lamb skewers
role: main
makes: [60 pieces, 12 lb]
batches: exact
ingredients: { lamb-leg: 12 lb }
steps:
  - { do: Thread., when: the day before, station: bench, hands-on: 60 min }
  - { do: Grill., when: at serving, station: grill, unattended: 30 min, cook to: 145 °F }
keeps: 2 days
hold: hot
pack: { carry: 24 pieces per half-sheet }
---
`,
  'recipes/bean-salad.mdx': `---
name: Bean salad
role: main
makes: [16 lb, 9 qt]
batches: exact
ingredients: { butter-beans: 16 lb }
steps:
  - { do: Dress., when: the day before, station: bench, hands-on: 30 min }
keeps: 3 days
hold: cold
pack: { carry: tub }
---
`,
  'recipes/pear-cup.mdx': `---
name: Pear cup
makes: 1 gal
batches: exact
ingredients: { pear-juice: 2 qt, water: 2 qt }
steps:
  - { do: Mix., when: the day before, station: bench, hands-on: 10 min }
keeps: 2 days
hold: cold
pack: { carry: tub }
---
`,
  'recipes/soda.mdx': `---
name: Pear soda
makes: [1 bottle, 12 fl oz]
ingredients: { pear-soda: 1 bottle }
steps:
  - { do: Count., when: the day before, station: bench, hands-on: 5 min }
keeps: 90 days
hold: room
temperature control: no
---
`,
  'recipes/ale.mdx': `---
name: Pale ale
makes: [1 bottle, 12 fl oz]
ingredients: { pale-ale: 1 bottle }
steps:
  - { do: Count., when: the day before, station: bench, hands-on: 5 min }
keeps: 90 days
hold: room
temperature control: no
---
`,
  'recipes/field-coffee.mdx': `---
name: Coffee
makes: 1½ gal
batches: half
ingredients: { coffee: 12 oz, water: 1½ gal }
steps:
  - { do: Boil., when: at serving, station: stove, unattended: 30 min, uses: water }
  - { do: Stir in the coffee and strain., when: at serving, station: bench, hands-on: 10 min, uses: coffee }
keeps: 1 day
hold: hot
temperature control: no
pack: { serve: urn }
---
`,
  'recipes/milk-jug.mdx': `---
name: Milk for the coffee
makes: 1 qt
batches: exact
ingredients: { milk: 1 qt }
steps:
  - { do: Fill the jugs., when: at serving, station: bench, hands-on: 5 min }
keeps: 1 day
hold: cold
---
`,
  'packages/lunch.mdx': `---
name: Lunch
style: buffet
price: { 20+: 40.00 }
child: 50 %
minimum guests: 20
hours: 4 hours
courses:
  - name: To eat
    dishes:
      lamb-skewers: 2 pieces per guest
      bean-salad: 3 oz per guest
drinks:
  name: To drink
  per guest: 2 in the first hour, then 1 per hour
  per child: 1 per hour
  kinds:
    pear-cup: { share: 30 %, children: 37.5 %, glass: 8 fl oz, ice: glass, in: tumbler }
    soda: { share: 20 %, children: 37.5 %, ice: tub }
    ale: { share: 20 %, ice: tub }
    field-coffee: { share: 10 %, glass: 8 fl oz, for: adults, in: mug, with: { milk-jug: ½ fl oz } }
  water: { share: 20 %, children: 25 %, ice: glass, in: tumbler }
---
`,
  'proposals/pell-supper.md': `---
link: mk4vxr2hq7tz3cwnb6ylpaj5ge
client: Tamsin Pell
occasion: Supper
date: 2027-05-15
serve at: 13:00
place: hill-town
venue: { name: The park, power: none, water: "no", cold space: "no", cover: "no", ovens: none, burners: none, stairs: none }
weather: 30 °C
travel: 30 min
valid until: 2027-05-01
guests: { adults: 100, children: 20 }
packages: lunch
lines: 1
crew meal: none
---
Dear Tamsin,
`,
};
