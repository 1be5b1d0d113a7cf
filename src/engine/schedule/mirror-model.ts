import { type Model, modelFrom } from './model.ts';
import { NEVER, NONE } from './network.ts';
import { copyOf, type Profile } from './profile.ts';

/**
 * The same blocks with time running backward: one that began at a minute and took n minutes begins at the negative of
 * its end. Bounds are mirrored as they are, so that no block can be where it could not be before.
 */
export function mirroredModel(model: Model): Model {
  const { size, minutes, needAt } = model;
  const mirror = modelFrom({
    blocks: model.blocks.map((block) => ({
      ...block,
      begins: block.begins
        .map(({ first, last }) => ({ first: -last - block.minutes, last: -first - block.minutes }))
        .reverse(),
    })),
    needs: model.blocks.map((block, number) =>
      Array.from({ length: (needAt[number + 1] as number) - (needAt[number] as number) }, (_, index) => {
        const need = (needAt[number] as number) + index;
        return {
          resource: model.needResource[need] as number,
          amount: model.needAmount[need] as number,
          from: block.minutes - (model.needUntil[need] as number),
          until: block.minutes - (model.needFrom[need] as number),
        };
      }),
    ),
    after: mirroredPaths(model),
    calendars: model.calendars.map(mirroredProfile),
    origin: model.origin,
  });
  for (let block = 0; block < size; block++) {
    mirror.earliest[block] = -(model.latest[block] as number) - (minutes[block] as number);
    mirror.latest[block] = -(model.earliest[block] as number) - (minutes[block] as number);
  }
  return mirror;
}

function mirroredPaths({ size, minutes, before, earlier }: Model): Int32Array {
  const paths = new Int32Array(size * size).fill(NONE);
  for (let from = 0; from < size; from++) {
    paths[from * size + from] = 0;
    for (const to of earlier[from] as Int32Array)
      paths[from * size + to] =
        (before[from * size + to] as number) + (minutes[from] as number) - (minutes[to] as number);
  }
  return paths;
}

function mirroredProfile(profile: Profile): Profile {
  const { count } = profile;
  const mirror = copyOf(profile);
  for (let step = 0; step < count; step++) {
    mirror.times[step] = -(profile.times[count - step] as number);
    mirror.free[step] = profile.free[count - 1 - step] as number;
  }
  // The ends stay where every profile has them.
  mirror.times[0] = NONE;
  mirror.times[count] = NEVER;
  return mirror;
}
