/** What stands under the help of every command that keeps the record. */
export const recordHelp = `
From a job file to a proof (nothing leaves this machine):
  axlewright seal 7-0412.job.json --person KB       makes the folder 7-0412
  axlewright merge 7-0412 /stick/7-0412 --to both   two devices' work, together
  axlewright sign-off both --person KB
  axlewright prove both                             writes 7-0412.proof.json
  axlewright verify 7-0412.proof.json --root "1f2e3 d4c5b 6a798 0f1e2"

A job file can be written on and sealed again: what is new in it is added. What is sealed is not
changed; write a correction behind it. An entry is acknowledged when it is synced to disk.

verify ends with 0 when it is intact, every hand is known and the last sign-off covers all and
comes out again; with 1 when one of that is not so, which it says; with 2 when there is nothing
to verify. The others end with 1 when somebody must decide something, and with 2, having
written nothing, when input cannot be used or the disk says no.
`

/** What stands under the help of the workshop. */
export const workshopHelp = `
On the first device, once:
  axlewright workshop make "Harbour yard" --device "office"
On every other one, to see its key; then on an owner's; then, with the owner's log, on the other:
  axlewright workshop list
  axlewright workshop certify KEY "bay 2 tablet"
  axlewright workshop join /stick/log.jsonl --root "1f2e3 d4c5b 6a798 0f1e2"
When one is lost:
  axlewright workshop revoke "bay 2 tablet" --why "lost on the quay"

The device's key and the workshop's log stand in .axlewright in the user's own folder, or in the
folder that AXLEWRIGHT_HOME names. Jobs must name the workshop as it was made. The root's secret
is needed only when the last owner's device is lost: certify … --owner --by-root.
`

/** What stands under the help of the paper. */
export const paperHelp = `
It ends with 0 when the work is finished and proven, with 1 when something is open or not proven,
which the paper says as well. Nothing that is open is left out. The square code holds the id of
the sign-off and the workshop's root in plain text; it names no address.
`

/** What stands under the help of deciding and correcting. */
export const decideHelp = `
  axlewright decide both                                     what is said two ways; ends with 1
  axlewright decide both --keep 74 --why "looked again" --person KB
  axlewright correct both 71 text "the ramp is steep" --why "slip of the pen" --person KB

Both add an entry; nothing that was sealed changes. Where the workshop has people with codes, the
code of the one who is named is typed, or piped in.
`

/** What stands under the help of erasing. */
export const eraseHelp = `
  axlewright erase done/7-0412                  all that is personal
  axlewright erase done/7-0412 vin phone        these fields only
  axlewright erase 7-0412.proof.json            a proof, written anew without it
  axlewright erase done/7-0412 photos           its photos as well; photo:HASH only one
  axlewright workshop keeps 24                  said once, by an owner
  axlewright erase done --due                   all jobs whose last entry is older than that

Personal are: VIN, plate, owner, driver, telephone, who agreed, who answered, who was told. In the
log stands a token in their place, so that every seal and sign-off holds as before. The VIN is
among them because with it anybody can find whose vehicle it is. Signs of hands stay: they say
who is answerable for the work. Nothing can be erased of what was typed into remarks, nor on disks
that keep old blocks, in backups, or with others.
`
