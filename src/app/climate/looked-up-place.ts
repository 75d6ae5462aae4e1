// A place whose normals were looked up, as the state of a view: what the search chose becomes a climate to stand in, or
// fills the form of normals.

import { useState } from 'preact/hooks';
import type { LocalNormals } from '../../places/local-normals.ts';
import type { FoundPlace } from '../../places/looked-up.ts';
import type { ExposureId } from '../../places/wind-exposure.ts';
import { messageOf } from '../parts/message-of.ts';
import { useSession } from '../state/session-context.ts';
import type { PlaceChoice } from './PlaceSearch.tsx';
import { placeNormals } from './place-index.ts';

export interface LookedUpPlace {
  readonly place: FoundPlace;
  /** how it lies to the wind; null where it was not said */
  readonly exposure: ExposureId | null;
  readonly local: LocalNormals;
}

/**
 * The place looked up last, what to do with a choice of the search, and with an answer about the wind.
 *
 * @param stand what to do with a climate that was chosen in the place's stead, by its key
 */
export function useLookedUpPlace(stand: (climate: string) => void) {
  const { tell, workspace } = useSession();
  const [looked, setLooked] = useState<LookedUpPlace | null>(null);
  const lookUp = (place: FoundPlace, exposure: ExposureId | null) => {
    placeNormals(place, exposure, workspace.units.peek()).then(
      (local) => setLooked({ place, exposure, local }),
      (reason) => tell('trouble', messageOf(reason)),
    );
  };
  return {
    looked,
    choose(choice: PlaceChoice) {
      if (choice.kind === 'climate') stand(choice.climate.key);
      else lookUp(choice.place, null);
    },
    expose(exposure: ExposureId | null) {
      if (looked) lookUp(looked.place, exposure);
    },
  };
}
