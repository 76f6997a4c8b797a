// Command contralay is a build-sheet workbench for wiring harnesses at the
// terminal. See README.md.
package main

import (
	"os"
	"runtime/debug"
	"time"

	_ "contralay/ui/quiet" // before the terminal library: see there
)

// gcPercent lets the heap grow to some 20 MB between collections: a start reads its
// tables without one, and no key waits for one.
const gcPercent = 400

func main() {
	debug.SetGCPercent(gcPercent)
	os.Exit(run(os.Args[1:], world{
		in: os.Stdin, out: os.Stdout, err: os.Stderr, env: os.Getenv, now: time.Now,
	}))
}
