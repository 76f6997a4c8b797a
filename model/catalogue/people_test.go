package catalogue

import (
	"strings"
	"testing"
)

const goodPeople = `[[person]]
id          = "7"
name        = "A. Builder"
[[person]]
id          = "14"
name        = "B. Inspector"
may_inspect = true
[[instrument]]
id     = "IR2"
what   = "insulation tester"
serial = "0815"
due    = "2026-05-31"
`

// A shop lists who builds and what it measures with; its entry stands in the place of another of the
// same id, in their order, and no hash of figures hangs on them.
func TestPeopleAndInstruments(t *testing.T) {
	c := mustRead(t, goodPeople)
	if p, ok := c.Person("14"); !ok || p.Name != "B. Inspector" || !p.MayInspect {
		t.Errorf("%+v", p)
	}
	if p, ok := c.Person("7"); !ok || p.MayInspect {
		t.Errorf("%+v", p)
	}
	if i, ok := c.Instrument("IR2"); !ok || i.Due != "2026-05-31" || i.Serial != "0815" {
		t.Errorf("%+v", i)
	}
	if _, ok := c.Person("8"); ok {
		t.Error("somebody who is not there")
	}
	over := Merge(c, mustRead(t, "[[person]]\nid = \"7\"\nname = \"C. Other\"\n[[person]]\nid = \"9\"\nname = \"D. New\"\n"))
	if len(over.People) != 3 || over.People[0].Name != "C. Other" || over.People[2].ID != "9" || len(over.Instruments) != 1 ||
		c.People[0].Name != "A. Builder" {
		t.Errorf("%+v", over.People)
	}
	if c.Sum() != empty().Sum() {
		t.Error("the hash of figures hangs on who builds")
	}
	for from, want := range map[string]string{
		`"14"`:         `person "7": id: "7" is in the file already; allowed: each person once`,
		`"A. Builder"`: `person "7": name: it is empty`,
		`true`:         `may_inspect: "yes" is neither true nor false`,
		`"2026-05-31"`: `instrument "IR2": due: "31.5.26" is not a day; allowed: a day such as 2026-05-31`,
		`what   `:      `instrument "IR2": `,
	} {
		to := map[string]string{`"14"`: `"7"`, `"A. Builder"`: `""`, `true`: `"yes"`, `"2026-05-31"`: `"31.5.26"`, `what   `: `which  `}[from]
		_, err := Read(strings.NewReader(strings.Replace(goodPeople, from, to, 1)), "shop.toml")
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%s: %v", from, err)
		}
	}
}
