package kit

import (
	"fmt"
	"math"
	"strings"

	"github.com/charmbracelet/bubbles/progress"

	"contralay/ui/draw"
)

// Progress draws how far a long piece of work has come, in one line of at most w cells:
// what it does, a bar, the share, and how much of how much. It does not move by itself:
// the share is what it is given, 0 to 1. The bar is the library's; the row it stands in
// is painted as rows are.
func (t *Theme) Progress(label string, share float64, counts string, w int) string {
	const most, least = 40, 6
	if math.IsNaN(share) {
		share = 0
	}
	share = min(max(share, 0), 1)
	label, counts = t.Text(label), t.Text(counts)
	// Rounded down: work that is not done does not say 100.
	percent := fmt.Sprintf("%3d%%", int(math.Floor(share*100)))
	if counts != "" {
		counts = "  " + counts
	}
	room := w - draw.Width(label) - len(percent) - draw.Width(counts) - 2
	if room < least {
		room, counts = room+draw.Width(counts), ""
	}
	if room < least {
		return draw.Cut(strings.TrimSpace(label+" "+strings.TrimSpace(percent)), max(w, 0), t.ASCII)
	}
	bar := progress.New(progress.WithColorProfile(profile(draw.NoColour)), progress.WithoutPercentage(),
		progress.WithFillCharacters(t.Signs.Full, t.Signs.Empty), progress.WithWidth(min(room, most)))
	return label + " " + bar.ViewAs(share) + " " + percent + counts
}
