// What is in the climate's panel, from top to bottom.

import { useState } from 'preact/hooks';
import type { FoundPlace } from '../../places/looked-up.ts';
import type { ExposureId } from '../../places/wind-exposure.ts';
import { useSession } from '../state/session-context.ts';
import '../style/places.css';
import { ClimateGlanceView } from './ClimateGlanceView.tsx';
import { HotterChoice } from './HotterChoice.tsx';
import { type LookedUpPlace, NormalsForm } from './NormalsForm.tsx';
import { type PlaceChoice, PlaceSearch } from './PlaceSearch.tsx';
import { placeNormals } from './place-index.ts';
import { WorldMap } from './WorldMap.tsx';

export function ClimateSheet() {
  const { workspace, tell } = useSession();
  const [looked, setLooked] = useState<LookedUpPlace | null>(null);
  const lookUp = (place: FoundPlace, exposure: ExposureId | null) =>
    placeNormals(place, exposure).then(
      (local) => setLooked({ place, exposure, local }),
      (reason) => tell('trouble', reason instanceof Error ? reason.message : String(reason)),
    );
  const choose = (choice: PlaceChoice) => {
    if (choice.kind === 'climate') workspace.set('climate', choice.climate.key, '');
    else void lookUp(choice.place, null);
  };
  return (
    <>
      <PlaceSearch label="Any place by its name, or by latitude and longitude" onChoose={choose} />
      <ClimateGlanceView />
      <WorldMap chosen={looked?.place ?? null} />
      <HotterChoice />
      <NormalsForm looked={looked} onExposure={(exposure) => looked && void lookUp(looked.place, exposure)} />
    </>
  );
}
