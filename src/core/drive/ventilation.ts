/**
 * Share of thrust left when the shaft lies `immersion` m under the surface and the propeller draws air; `radius` m.
 * 1 from 1.3 radii down, 0 clear of the water. A warning for high mounting, hard turns and waves.
 * Source: Minsaas, Faltinsen and Persson 1983, from memory.
 */
export function ventilatedThrustShare(immersion: number, radius: number): number {
  const depth = immersion / radius;
  return depth >= 1.3 ? 1 : Math.max(1 - 0.675 * (1 - 0.769 * depth) ** 1.258, 0);
}
