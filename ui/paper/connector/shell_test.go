package connector_test

import (
	"strings"
	"testing"

	"contralay/model"
)

// A builder reads which thread the accessory goes on; who fits the harness, the hole or the torque that the mount asks for. The
// figures are those of shell 18 (19) in MIL-DTL-38999N figures 8 to 11, as typed a second time from the notes on them; 90 and
// 95 lbf·in by 0.112985 N·m each.
func TestShellOfAConnector(t *testing.T) {
	thread := "Accessory thread: 1.0625-18 (series I, II), M28x1.0-6g 0.100R (III, IV)."
	for _, c := range []struct {
		insert string
		mount  model.Mount
		want   []string
		not    []string
	}{
		{"18-32", model.MountInline, []string{thread}, []string{"Jam nut M", "wants a hole"}},
		{"18-32", model.MountFlange, []string{thread, "wants a hole of 32.94 mm"}, []string{"Jam nut M"}},
		{"18-32", model.MountJamNut, []string{thread, "Jam nut M35: tighten with 10.2 to 10.7 N·m (90 to 95 lbf·in; series III)."},
			[]string{"wants a hole"}},
		{"99-1", model.MountJamNut, nil, []string{"Accessory thread", "Jam nut M"}},
	} {
		page := text(printed(t, handLoom(t, func(h *model.Harness) *model.Harness {
			for k := range h.Terminations {
				h.Terminations[k].Insert = model.Opt[string]{}
			}
			h.Terminations[0].Insert, h.Terminations[0].Mount = model.Some(c.insert), model.Some(c.mount)
			return h
		})))
		for _, want := range c.want {
			if !strings.Contains(page, want) {
				t.Errorf("%s %s: no %q in %.600s", c.insert, c.mount, want, page)
			}
		}
		for _, not := range c.not {
			if strings.Contains(page, not) {
				t.Errorf("%s %s says %q", c.insert, c.mount, not)
			}
		}
	}
}
