package runline

import "testing"

func TestDashesBeforeCavities(t *testing.T) {
	for text, want := range map[string]string{
		"X1 – 1 -> Fuel pump – A, feed":    "X1:1 -> Fuel pump:A, feed",
		"X1 - 2 → Main relay - 87a - coil": "X1:2 → Main relay:87a - coil",
		"Dash — B => Lamp — -":             "Dash:B => Lamp:-",
		"X1 – 1 -> Fuel pump":              "", // the far end has none
		"Main feed – X1:1 -> Lamp – 3":     "", // a name before the near end
		"1 – red -> Lamp – 3":              "", // a cavity before a colour
		"X1 – 1 -> Lamp – left":            "",
		"X1 – 1 to Lamp – 3":               "", // no arrow
	} {
		if want == "" {
			want = text
		}
		if got := ColonsForDashes(text); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}
