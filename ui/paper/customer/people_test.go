package customer

import (
	"regexp"
	"strings"
	"testing"

	"contralay/calc/query/record"
	"contralay/model"
)

// Who built it and who signed: everybody once, with all that he signed; who did both is a concession; and what was conceded is either
// listed below or said to be nothing.
func TestWhoBuiltAndWhoSigned(t *testing.T) {
	tags := regexp.MustCompile(`(<[^>]*>|\s)+`)
	signed := func(hold, id, name, at string, alone bool) record.Inspected {
		return record.Inspected{Hold: hold, ID: id, Name: name, At: at, Alone: alone}
	}
	at := func(steps ...string) (out []model.Deviation) {
		for _, s := range steps {
			out = append(out, model.Deviation{Step: model.Some(s)})
		}
		return out
	}
	for _, c := range []struct {
		name string
		r    record.Record
		want string
	}{
		{"nobody", record.Record{}, "built by nobody has a name in the record inspected by nobody has signed a hold concessions none " +
			"of tests " +
			"or inspection"},
		{"two built it", record.Record{Built: []record.Worker{{ID: "17", Name: "Ada", Steps: 12}, {ID: "bo", Steps: 1}},
			Inspected: []record.Inspected{signed("one", "3", "Cy", "2026-01-02", false), signed("two", "4", "4", "", false),
				signed("three", "3", "Cy", "", false)}},
			"built by Ada (17), 12 steps; bo, 1 step inspected by Cy (3): one 2026-01-02, three without a day 4: two without a day " +
				"concessions none of tests or inspection"},
		{"by one who built it", record.Record{Built: []record.Worker{{Name: "no number", Steps: 2}},
			Inspected: []record.Inspected{signed("one", "3", "", "d", false), signed("two", "3", "", "d", true)}},
			"built by -, 2 steps inspected by 3: one d, two d. Built it too: a concession concessions the inspection, as said above"},
		{"other deviations", record.Record{Deviations: at("cut 1", "lay T1")},
			"built by nobody has a name in the record inspected by nobody " +
				`has signed a hold concessions none of tests or inspection. "As built" below has 2 deviations`},
		{"conceded", record.Record{Deviations: at("hold two", "cut 1")},
			"built by nobody has a name in the record inspected by nobody has " +
				"signed a hold"},
		{"conceded at a pull", record.Record{Deviations: at("pull 22")},
			"built by nobody has a name in the record inspected by nobody has " +
				"signed a hold"},
	} {
		text := string(Set{Record: &c.r}.people().HTML)
		text = strings.ReplaceAll(strings.TrimSpace(tags.ReplaceAllString(text, " ")), "&#34;", `"`)
		if text != c.want {
			t.Errorf("%s:\n%s, want\n%s", c.name, text, c.want)
		}
	}
}
