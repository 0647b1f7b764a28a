/** Help of `axlewright read`: each method with the words it takes, on an example that can be run. */
export const readMethods = `
Methods, each with the words it takes (WORD=VALUE; several values with commas; every value with its unit):

  inclinometer   wheel="front left" gauge=inclinometer readings="0°: -0.30°, 180°: -0.15°"
                 (how far the wheel was turned on its hub: what the gauge showed)
  tape           axle=front tape=tape front="1502.0 mm, 1502.5 mm" rear="1504.0 mm"
                 belowHub="120 mm" levelled="3 mm" radius="331 mm"
  sweep          side=left gauge=inclinometer steerGauge=turn-plates
                 left="20° 1.35°, 20.5° 1.30°" right="-20° -0.65°, -19.5° -0.70°"
                 (steer to the left is plus; then the camber shown there)
  run-out        wheel="front left" gauge=dial readings="0°: 0.12 mm, 120°: -0.31 mm, 240°: 0.43 mm"
                 diameter="402 mm"
  height         wheel="front left" rule=rule readings="441 mm, 441.5 mm"
  play           wheel="front right" gauge=dial moves=camber swings="1.9 mm, 1.88 mm" arm="318 mm"
  strings        a job file says it more easily; see examples/port-unit-07

Add bay=bay-2, track="1544 mm" and wheelbase="3.2 m" to take the floor of a bay of the kit into account.

  axlewright read inclinometer --kit examples/port-kit.kit.json wheel="front left" \\
    gauge=inclinometer readings="0°: -0.30°, 180°: -0.15°" bay=bay-2 track="1544 mm" wheelbase="3.2 m"`
