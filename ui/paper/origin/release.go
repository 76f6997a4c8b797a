package origin

// Release is the name of this release of the program. It is raised whenever a figure or a
// printed word changes, so that two sheets of one file that say different things also say that
// two programs made them. `go test ./ui/paper -run Release -update` raises it.
const Release = "0.20"
