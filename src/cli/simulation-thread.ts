// Entry of a simulation thread of the command line. It reads no weather: what reads tables would slow its every year
// (site-weather.ts).
/// <reference path="./comlink-node.d.ts" />
import { parentPort } from 'node:worker_threads';
import { expose } from 'comlink/dist/esm/comlink.mjs';
import nodeEndpoint from 'comlink/dist/esm/node-adapter.mjs';
import { createRunService } from '../../workers/run-service.ts';

if (parentPort) expose(createRunService(), nodeEndpoint(parentPort));
