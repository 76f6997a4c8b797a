package calc_test

import (
	"flag"
	"fmt"
	"path/filepath"
	"reflect"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/model"
	"contralay/model/shorttest"
)

var everyValue = flag.Bool("every-value", false, "change each field to every value that is known of it, not to the first")

// Whichever field of a harness changes, a sheet built on the one before it is the one built
// from nothing; and so is the way back. A field that a phase reads and its comparison
// forgets (phase/*/reuse.go) is found here.
func TestNoFieldIsForgotten(t *testing.T) {
	cat := calctest.Catalogue(t)
	files, err := filepath.Glob(filepath.Join("..", "testdata", "*.toml"))
	if err != nil || len(files) < 5 {
		t.Fatal(files, err)
	}
	all := calctest.Pool{}
	for _, path := range files {
		all.Gather("Harness", reflect.ValueOf(*calctest.Load(t, filepath.Base(path))))
	}
	starts := map[string]*model.Harness{
		"a capped spare": calctest.Parse(t, fmt.Sprintf(calctest.CappedSpare, "from = \"P:2\"\ncapped_at = \"J\"\nfold_mm = 60")),
	}
	for _, name := range []string{"example", "feeds", "every-key"} {
		starts[name] = calctest.Load(t, name+".toml")
	}
	most := 1 // values of a field
	if shorttest.Long() {
		most = 2
	}
	tried, felt, fields := map[string]int{}, map[string]bool{}, 0
	for name, h := range starts {
		complete := calc.Complete(h, cat, nil)
		was := calc.Build(h, cat, withProposals(complete.Proposals))
		all.Variants(t, "", reflect.ValueOf(*h), func(field string, to reflect.Value) {
			changed := to.Interface().(model.Harness)
			if len(changed.Check()) > 0 {
				return // no file has it, and no edit makes it
			}
			if tried[name+field]++; !*everyValue && tried[name+field] > most {
				return
			}
			if fields++; !shorttest.Long() && fields%6 > 0 { // a sixth, another one in another order of the starts
				return
			}
			built := calc.Build(&changed, cat, complete)
			fresh := calc.Build(&changed, cat, withProposals(complete.Proposals))
			at := place{t, fmt.Sprintf("%s, %s changed", name, field)}
			sameSheets(at, built, fresh)
			back := place{t, fmt.Sprintf("%s, %s changed and changed back", name, field)}
			sameSheets(back, calc.Build(h, cat, built), was)
			if !reflect.DeepEqual(fresh.Snags, was.Snags) || !reflect.DeepEqual(fresh.Wires, was.Wires) ||
				!reflect.DeepEqual(fresh.Branches, was.Branches) {
				felt[field] = true
			}
		})
	}
	if len(felt) < 100 && shorttest.Long() || len(felt) < 15 {
		t.Errorf("only %d fields change a sheet: the test does not reach what it is for", len(felt))
	}
}

// place is a test that says where it is.
type place struct {
	*testing.T
	where string
}

func (p place) Fatalf(format string, args ...any) {
	p.T.Helper()
	p.T.Fatalf(p.where+": "+format, args...)
}
