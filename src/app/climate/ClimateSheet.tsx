// What is in the climate's panel, from top to bottom.

import { ClimateGlanceView } from './ClimateGlanceView.tsx';
import { HotterChoice } from './HotterChoice.tsx';
import { NormalsForm } from './NormalsForm.tsx';

export function ClimateSheet() {
  return (
    <>
      <ClimateGlanceView />
      <HotterChoice />
      <NormalsForm />
    </>
  );
}
