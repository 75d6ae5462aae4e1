// Entry of a simulation thread of the command line.
/// <reference path="./comlink-node.d.ts" />
import { parentPort } from 'node:worker_threads';
import { expose } from 'comlink';
import nodeEndpoint from 'comlink/dist/esm/node-adapter.mjs';
import { createSimulationService } from '../../workers/service.ts';

if (parentPort) expose(createSimulationService(), nodeEndpoint(parentPort));
