// Entry of the simulation worker.
import { expose } from 'comlink';
import { createSimulationService } from './service.ts';

expose(createSimulationService());
