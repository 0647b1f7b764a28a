/** What stands below the options of `axlewright plan --help`. */
export const planHelp = `
Examples, on the demo (all values in it are invented):
  axlewright plan examples/port-unit-07/port-unit-07.job.json
  axlewright plan examples/port-unit-12/port-unit-12.job.json --replace "front left strut"
  axlewright plan examples/port-unit-12/port-unit-12.job.json --html plan.html
When something does not come undone:
  axlewright plan examples/port-unit-07/port-unit-07.job.json --failed "front left lower-ball-joint: taper will not part"
  axlewright plan examples/port-unit-07/port-unit-07.job.json --failed "front right lower-front-bolt: seized sleeve, soak, impact"
On from the record, once it says how the vehicle is carried and what is off; or from the sound vehicle:
  axlewright plan JOB
  axlewright plan JOB --afresh
Stuck halfway:
  axlewright plan JOB --make-safe stand
  axlewright plan JOB --make-safe roll
An order of your own:
  axlewright plan examples/port-unit-12/port-unit-12.job.json --ids > order.txt
  (move lines of order.txt)
  axlewright plan examples/port-unit-12/port-unit-12.job.json --judge order.txt

It ends with 1 when an order breaks a rule or leaves something out, or the log names what no model has.`
