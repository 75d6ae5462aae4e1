// What is in the climate's panel, from top to bottom.

import { useSession } from '../state/session-context.ts';
import { ActualYears } from './ActualYears.tsx';
import { ClimateGlanceView } from './ClimateGlanceView.tsx';
import { HotterChoice } from './HotterChoice.tsx';
import { useLookedUpPlace } from './looked-up-place.ts';
import { NormalsForm } from './NormalsForm.tsx';
import { PlaceSearch } from './PlaceSearch.tsx';
import { WorldMap } from './WorldMap.tsx';

export function ClimateSheet() {
  const { workspace } = useSession();
  const { looked, choose, expose } = useLookedUpPlace((climate) => workspace.set('climate', climate, ''));
  return (
    <>
      <PlaceSearch label="Any place by its name, or by latitude and longitude" onChoose={choose} />
      <ClimateGlanceView />
      <WorldMap chosen={looked?.place ?? null} />
      <HotterChoice />
      <ActualYears />
      <NormalsForm looked={looked} onExposure={expose} />
    </>
  );
}
