// Sources: exact multi-pane solution of the solar engineering text (table glass-transmittance.csv: 1 to 3 panes,
// index 1.526, KL 0.0524); glazing of the fabric cases of ANSI/ASHRAE 140, edition A (index 1.526, 0.0196/mm,
// 3.175 mm) and edition B (index 1.5205, KL 0.096), whose angular tables were computed from the recalled inputs;
// ASHRAE Fundamentals solar heat gain by angle of uncoated 3 mm glass (from memory, high confidence).
import { describe, expect, test } from 'vitest';
import { angularTable } from '../../src/physics/glass-angular.ts';
import { type ClearPane, glassAtAngle, glassDiffuse } from '../../src/physics/glass-transmittance.ts';
import { glazingPath } from '../../src/physics/glass-u-value.ts';
import { solarHeatGain } from '../reference/whole-formulas.ts';
import { check } from './ledger.ts';
import { readJson, readTable } from './reference-table.ts';

/** Allowed errors. */
const ALLOWED = {
  /** the table prints six decimals; both are exact solutions */
  exact: 1e-5,
  /** the fabric cases' own criterion */
  fabric: 0.003,
  /** handbook prints two decimals */
  handbook: 0.005,
  /**
   * beyond it a note: the handbook does not print index and extinction of its glass, and averages the two polarisations pane by pane, which is 0.03 too low for two panes
   * at 60° and 0.05 for three; the exact stack above is right, and the test below shows where the gap comes from
   */
  handbookNote: 0.05,
};

interface FabricTable {
  readonly angular_table_calculated: {
    readonly rows: readonly (readonly number[])[];
    readonly hemispherical_diffuse?: Readonly<Record<string, number>>;
  };
  readonly hemispherical_diffuse?: Readonly<Record<string, number>>;
}

const fabric = readJson<{ windows: Record<string, FabricTable> }>('fabric-tests.json').windows;

describe('clear panes', () => {
  test('33 rows of transmitted, reflected and absorbed shares agree for one to three panes', () => {
    const rows = readTable('glass-transmittance.csv');
    expect(rows).toHaveLength(33);
    for (const row of rows) {
      const panes = Array<ClearPane>(row.number('panes')).fill({
        refractiveIndex: 1.526,
        extinctionPerM: 13.1,
        thicknessM: 0.004,
      });
      const angle = row.text('incidence_deg');
      const ours = angle === 'diffuse' ? glassDiffuse(panes) : glassAtAngle(panes, Number(angle));
      const columns: [string, number][] = [
        ['transmittance', ours.transmittance],
        ['reflectance', ours.reflectance],
        ['absorptance', ours.absorptance.reduce((a, b) => a + b)],
        ...ours.absorptance.map((share, i): [string, number] => [
          ['absorptance_pane1_outer', 'absorptance_pane2', 'absorptance_pane3'][i]!,
          share,
        ]),
      ];
      for (const [column, value] of columns) {
        check({
          source: 'Exact Fresnel-Bouguer stack',
          case: `${panes.length} panes, ${angle}${angle === 'diffuse' ? '' : '°'}`,
          quantity: column,
          reference: row.number(column),
          ours: value,
          allowed: ALLOWED.exact,
          unit: '',
          mark: 'computed',
        });
      }
    }
  });
});

describe('glazing of the fabric cases', () => {
  const editions = [
    ['edition_A_double_clear', 1.526, 19.6, 0.003175],
    ['edition_B_double_clear', 1.5205, 0.096 / 0.003048, 0.003048],
  ] as const;

  test.each(editions)(
    '%s: transmitted and absorbed shares at ten angles and for diffuse light',
    (...edition) => {
      const [name, refractiveIndex, extinctionPerM, thicknessM] = edition;
      const table = angularTable({ panes: 2, refractiveIndex, extinctionPerM, thicknessM });
      const { angular_table_calculated, hemispherical_diffuse } = fabric[name]!;
      const { rows } = angular_table_calculated;
      expect(rows).toHaveLength(10);
      const enter = (where: string, quantity: string, reference: number, ours: number) =>
        check({
          source: `ANSI/ASHRAE 140 glazing, ${name.replaceAll('_', ' ')}`,
          case: where,
          quantity,
          reference,
          ours,
          allowed: ALLOWED.fabric,
          unit: '',
          mark: 'computed',
        });
      for (const [angle, transmitted, outer, inner] of rows) {
        enter(`${angle}°`, 'transmittance', transmitted!, table.transmittance[angle!]!);
        enter(`${angle}°`, 'absorbed outer', outer!, table.absorbed[0]![angle!]!);
        enter(`${angle}°`, 'absorbed inner', inner!, table.absorbed[1]![angle!]!);
      }
      const diffuse = hemispherical_diffuse ?? angular_table_calculated.hemispherical_diffuse!;
      enter('diffuse', 'transmittance', diffuse.transmittance!, table.diffuseTransmittance);
      enter('diffuse', 'absorbed outer', diffuse.absorptance_outer!, table.diffuseAbsorbed[0]!);
      enter('diffuse', 'absorbed inner', diffuse.absorptance_inner!, table.diffuseAbsorbed[1]!);
    },
  );

  test('edition A: single-pane transmittance 0.86156 and solar heat gain by angle', () => {
    const source = 'ANSI/ASHRAE 140 glazing, edition A double clear';
    const pane = { refractiveIndex: 1.526, extinctionPerM: 19.6, thicknessM: 0.003175 };
    const [glass, gap] = [0.003175 / 1.06, 1 / 6.297];
    const total = 1 / 21 + 2 * glass + gap + 1 / 8.29;
    const inward = [(1 / 21 + glass / 2) / total, (1 / 21 + 1.5 * glass + gap) / total];
    const base = { source, unit: '', mark: 'memory' } as const;
    check({
      ...base,
      case: 'one pane, normal',
      quantity: 'transmittance',
      reference: 0.86156,
      ours: glassAtAngle([pane], 0).transmittance,
      allowed: 0.0005,
    });
    const table = angularTable({ panes: 2, ...pane });
    const { rows } = fabric.edition_A_double_clear!.angular_table_calculated;
    expect(rows).toHaveLength(10);
    for (const row of rows) {
      check({
        ...base,
        case: `${row[0]}°`,
        quantity: 'solar heat gain',
        reference: row[4]!,
        ours: solarHeatGain(table, inward, row[0]!),
        allowed: ALLOWED.fabric,
        mark: row[0] === 0 ? 'memory' : 'computed',
      });
    }
    check({
      ...base,
      case: 'diffuse',
      quantity: 'solar heat gain',
      reference: 0.7045,
      ours: solarHeatGain(table, inward, 'diffuse'),
      allowed: ALLOWED.fabric,
      mark: 'computed',
    });
  });
});

describe('handbook solar heat gain of uncoated 3 mm glass', () => {
  const HANDBOOK = [
    [1, [0.86, 0.84, 0.82, 0.78, 0.67, 0.42, 0.78]],
    [2, [0.76, 0.74, 0.71, 0.64, 0.5, 0.26, 0.66]],
    [3, [0.68, 0.65, 0.62, 0.54, 0.39, 0.18, 0.57]],
  ] as const;
  const ANGLES = [0, 40, 50, 60, 70, 80, 'diffuse'] as const;

  test.each(HANDBOOK)('%i clear pane(s), scaled to the normal value, follow the table', (count, values) => {
    expect(values).toHaveLength(ANGLES.length);
    const gap = { gas: 'air', widthM: 0.0127, emissivityOuter: 0.837, emissivityInner: 0.837 } as const;
    const { inwardFractions } = glazingPath(
      {
        panes: Array.from({ length: count }, () => ({ thicknessM: 0.003, conductivity: 1 })),
        gaps: Array.from({ length: count - 1 }, () => gap),
        insideEmissivity: 0.837,
      },
      90,
    );
    const clear = { panes: count, refractiveIndex: 1.526, extinctionPerM: 25, thicknessM: 0.003 };
    const normal = values[0];
    const table = angularTable({ ...clear, solarHeatGainNormal: normal, inwardFractions });
    for (const [i, angle] of ANGLES.entries()) {
      check({
        source: 'ASHRAE Fundamentals, fenestration',
        case: `${count} clear, ${angle}${angle === 'diffuse' ? '' : '°'}`,
        quantity: 'solar heat gain',
        kind: 'range',
        referenceMin: values[i]!,
        referenceMax: values[i]!,
        ours: solarHeatGain(table, inwardFractions, angle),
        allowed: ALLOWED.handbook,
        noteAllowed: ALLOWED.handbookNote,
        unit: '',
        mark: 'memory',
      });
    }
  });

  test('averaging polarisations pane by pane brings three panes at 60° down to the handbook and below', () => {
    const pane = { refractiveIndex: 1.526, extinctionPerM: 25, thicknessM: 0.003 };
    const averaged = (angle: number): number => {
      const { transmittance, reflectance } = glassAtAngle([pane], angle);
      const two = transmittance ** 2 / (1 - reflectance ** 2);
      const twoBack = reflectance + (transmittance ** 2 * reflectance) / (1 - reflectance ** 2);
      return (two * transmittance) / (1 - reflectance * twoBack);
    };
    const exact = (angle: number): number => glassAtAngle([pane, pane, pane], angle).transmittance;
    expect((0.68 * averaged(60)) / averaged(0)).toBeLessThan(0.54);
    expect((0.68 * exact(60)) / exact(0)).toBeGreaterThan(0.56);
  });
});
