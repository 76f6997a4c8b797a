// Command contralay is a build-sheet workbench for wiring harnesses at the
// terminal. See README.md.
package main

import (
	"os"
	"time"

	_ "contralay/ui/quiet" // before the terminal library: see there
)

func main() {
	os.Exit(run(os.Args[1:], world{
		in: os.Stdin, out: os.Stdout, err: os.Stderr, env: os.Getenv, now: time.Now,
	}))
}
