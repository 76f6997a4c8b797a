package main

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/sheet"
	"contralay/model/catalogue"
	"contralay/model/file"
)

// Before a correction is accepted it is said which branches would have another sheath, which sheath of a file's own
// no longer fits, and nothing of a branch that stays as it is: told from a sheet that is made anew by it.
func TestWhichSheathsWouldChange(t *testing.T) {
	t.Parallel()
	d, err := file.Parse(demonstration, "demo.toml")
	if err != nil {
		t.Fatal(err)
	}
	cat, err := catalogue.Default()
	if err != nil {
		t.Fatal(err)
	}
	was := calc.Complete(&d.Harness, cat, nil)
	changed, tight := 0, 0
	for _, of := range []string{"over, 1 layer", "over, 2 layers", "over, 3 layers"} {
		c := catalogue.Correction{Of: of, Bias: 0.15}
		said := "\n" + strings.Join(acts([]*sheet.Sheet{was}, []string{"demo.toml"}, cat, c), "\n") + "\n"
		is := calc.Complete(&d.Harness, catalogue.Merge(cat, &catalogue.Catalogue{Corrections: []catalogue.Correction{c}}), nil)
		for i := range was.Branches {
			a, b, id := &was.Branches[i].Sheath, &is.Branches[i].Sheath, was.H.Branches[i].ID
			_, rest, any := strings.Cut(said, "\ndemo.toml "+id+": ")
			line, _, _ := strings.Cut(rest, "\n")
			switch {
			case a.Part != b.Part:
				changed++
				if want := fmt.Sprintf(", its sheath changes from %s to %s", a.Part, b.Part); !strings.HasSuffix(line, want) {
					t.Errorf("%s, %s: %q, want %q", of, id, line, want)
				}
			case b.Verdict.Stops() && !a.Verdict.Stops():
				tight++
				if want := fmt.Sprintf(", its sheath %s no longer fits", a.Part); !strings.HasSuffix(line, want) {
					t.Errorf("%s, %s: %q, want %q", of, id, line, want)
				}
			case strings.Contains(line, "sheath"):
				t.Errorf("%s, %s keeps its sheath: %q", of, id, line)
			case any != (len(was.Branches[i].Layers) == int(of[6]-'0')):
				t.Errorf("%s, %s of %d layers: %q", of, id, len(was.Branches[i].Layers), line)
			}
		}
	}
	if changed < 3 || tight < 1 {
		t.Errorf("%d sheaths change, %d no longer fit: the test shows little", changed, tight)
	}
}
