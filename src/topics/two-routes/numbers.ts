import {
  frictionAngleDeg,
  nominal,
  parameters,
  regression,
  toothDepthUm,
  wearAreaUm2,
} from '../../model/index.ts';
import { factorOf } from '../../comparison/found.ts';
import {
  anglesOf,
  exponentReadAt,
  exponentsOf,
  frictionAngleAt,
  frictionLeft,
  routesOf,
  wedgeSpan,
} from '../../scene/routes.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, plain, ratioInWords, times } from '../../scene/show.ts';

/** Scratch depth and width of the flat that stand for an edge's apex on these pages: invented, for comparison only. */
export const scratchUm = 2;
export const flatUm = 10;

/** The most and the least card the published test saw cut at one angle, mm. */
const observedMm = { most: 835, least: 244 };
/** The angle's local exponent in the published regression, whose line in the angle is straight, at 15° per side. */
const publishedExponent = (cardMm: number): number => (-regression.perIncludedDegree * 30) / cardMm;

const { low: lowE, high: highE } = parameters.angleExponent;

/** The numbers of the two routes. */
export const routesNumbers: Record<string, (scene: Scene) => string> = {
  'routes.quick': ({ row: { quick } }) => times(factorOf(quick, 'wedge') * factorOf(quick, 'apex')),
  'routes.wedge': (scene) => times(routesOf(scene).wedge),
  'routes.tooth': (scene) => times(routesOf(scene).tooth),
  'routes.wear': (scene) => times(routesOf(scene).wear),
  'routes.apex': (scene) => times(routesOf(scene).apex),
  'routes.full': (scene) => times(routesOf(scene).full),
  'routes.careful': (scene) => times(routesOf(scene).careful),
  'routes.careful.words': (scene) => ratioInWords(routesOf(scene).careful),
  'wedge.elastic': (scene) => times(wedgeSpan(scene).elasticBed),
  'wedge.buried': (scene) => times(wedgeSpan(scene).buriedBevel),
  slicePush: ({ entry }) => brief(entry.slicePush),
  'friction.angle': ({ entry }) => `${plain(frictionAngleDeg(nominal(entry.friction)), 3)}°`,
  'subject.friction': (scene) => plain(frictionLeft(scene, anglesOf(scene).subject.bevel), 2),
  'subject.friction.angle': (scene) => `${plain(frictionAngleAt(scene, anglesOf(scene).subject.bevel), 3)}°`,
  'baseline.friction.angle': (scene) =>
    `${plain(frictionAngleAt(scene, anglesOf(scene).baseline.bevel), 3)}°`,
  'exponent.angle': (scene) => plain(exponentsOf(scene).total, 3),
  'exponent.angle.range': () => `${brief(lowE)} to ${brief(highE)}`,
  'exponent.read.friction': () => brief(exponentReadAt.friction),
  'exponent.read.draw': () => brief(exponentReadAt.slicePush),
  'exponent.published.low': () => plain(publishedExponent(observedMm.most), 2),
  'exponent.published.high': () => plain(publishedExponent(observedMm.least), 2),
  'exponent.wedge': (scene) => plain(exponentsOf(scene).wedge, 3),
  'exponent.apex': (scene) => plain(exponentsOf(scene).apex, 3),
  'exponent.full': (scene) => plain(exponentsOf(scene).wedge + exponentsOf(scene).tooth, 3),
  'scratch.depth': () => `${scratchUm} µm`,
  'flat.width': () => `${flatUm} µm`,
  'subject.tooth': (scene) => toothOf(anglesOf(scene).subject.apex),
  'baseline.tooth': (scene) => toothOf(anglesOf(scene).baseline.apex),
  'subject.wear': (scene) => wearOf(anglesOf(scene).subject.apex),
  'baseline.wear': (scene) => wearOf(anglesOf(scene).baseline.apex),
};

/** How far the scratch sets the apex back. */
export const toothOf = (angleDeg: number): string =>
  `${plain(toothDepthUm({ scratchUm, angleDeg, bevels: 1 }))} µm`;

/** The steel to wear away until the flat is there. */
export const wearOf = (angleDeg: number): string => `${plain(wearAreaUm2({ flatUm, angleDeg }))} µm²`;
