package desk

import (
	"flag"
	"fmt"
	"os"
	"testing"
)

// Each random test of the bench builds a harness after every key or edit: forty rounds of it, unless more are asked for
// by -rapid.checks; a hundred in the long form.
func TestMain(m *testing.M) {
	flag.Parse()
	if at := flag.Lookup("rapid.checks"); os.Getenv("CONTRALAY_LONG") == "" && at.Value.String() == at.DefValue {
		if err := at.Value.Set("40"); err != nil {
			fmt.Fprintln(os.Stderr, err)
			os.Exit(1)
		}
	}
	os.Exit(m.Run())
}
