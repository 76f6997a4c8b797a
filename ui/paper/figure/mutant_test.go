package figure

import (
	"encoding/json"
	"testing"

	"contralay/calc/calctest"
)

// Whatever the sheet has one of stands in its JSON: as many branches, wires, ends and feeds as in the file.
func TestEverythingIsInTheJSON(t *testing.T) {
	for _, name := range []string{"feeds", "example"} {
		s := calctest.Laid(t, name)
		text, err := All(s)
		if err != nil {
			t.Fatal(err)
		}
		var got map[string]json.RawMessage
		if err := json.Unmarshal(text, &got); err != nil {
			t.Fatal(err)
		}
		for key, want := range map[string]int{"branches": len(s.H.Branches), "wires": len(s.H.Wires),
			"terminations": len(s.H.Terminations), "feeds": len(s.H.Feeds)} {
			var all []json.RawMessage
			if err := json.Unmarshal(got[key], &all); err != nil && want > 0 || len(all) != want {
				t.Errorf("%s: %d %s, want %d (%v)", name, len(all), key, want, err)
			}
		}
	}
}
