package point

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/value"
)

// IsSize reports whether a text is a size of wire with its unit, or a section with its decimals.
func IsSize(text string) bool {
	g, ok := value.ParseGauge(text, value.BareAWG, value.MarkUnknown)
	return ok && g.Size != "" && !g.IsCable() && (strings.Trim(text, "0123456789.,") != "" || value.IsSection(text)) && !name.IsCavity(text)
}

// WithPole writes a colon before the pole of a device, "PSU +".
func WithPole(end string) string {
	for _, pole := range []string{" +", " -", " −"} {
		if of, ok := strings.CutSuffix(end, pole); ok && of != "" {
			return of + ":" + strings.ReplaceAll(pole[1:], "−", "-")
		}
	}
	return end
}
