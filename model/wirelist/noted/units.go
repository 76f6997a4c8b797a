package noted

import (
	"strings"

	"contralay/model/wirelist/point"
)

// Who has written AWG once leaves it out further down.
//
//	1 pump + (14 AWG, red) -> pump stud
//	2 level (24, white) -> sender S

// units writes AWG behind the gauges without unit that stand in brackets beside a colour, where another line has its unit in brackets
// beside a colour, and none is a cross section.
func (n *notes) units() {
	bare, awg, other := map[int]string{}, 0, 0
	n.texts(func(i int, text string) bool {
		open, end := strings.IndexByte(text, '('), strings.IndexByte(text, ')')
		if open < 0 || end < open {
			return true
		}
		first, second, ok := strings.Cut(text[open+1:end], ", ")
		switch {
		case !ok:
		case point.IsColour(second) && point.IsBareGauge(first):
			bare[i] = text[:open+1] + first + " AWG, " + second + text[end:]
		case point.IsColour(first) && point.IsBareGauge(second):
			bare[i] = text[:open+1] + first + ", " + second + " AWG" + text[end:]
		case point.IsColour(first) && isSize(second), point.IsColour(second) && isSize(first):
			if strings.Contains(strings.ToLower(text[open:end]), "awg") {
				awg++
			} else {
				other++
			}
		}
		return true
	})
	if awg == 0 || other > 0 {
		return
	}
	for i, text := range bare {
		n.set(i, text)
	}
}

// commas writes AWG behind the gauges without unit that stand beside a colour between two commas, "feed, 18 red, from fuse 3", in two
// lines or more; numbers that are all 12 or 24 are as likely volts, and beside a cross section they may be one.
func (n *notes) commas() {
	made, gauges, other := map[int]string{}, 0, false
	sizes := map[string]bool{}
	n.texts(func(i int, text string) bool {
		pieces := strings.Split(text, ", ")
		for k, p := range pieces {
			if colour, size, ok := point.BareBoth(strings.TrimSpace(p)); ok && k > 0 {
				pieces[k] = size + " AWG " + colour
				made[i] = strings.Join(pieces, ", ")
				sizes[size] = true
				if size != "12" && size != "24" {
					gauges++
				}
			}
		}
		low := strings.ToLower(text)
		other = other || strings.Contains(low, "mm2") || strings.Contains(low, "mm²")
		return true
	})
	const most = 3 // sizes that all differ; more count something else (no source)
	if len(made) < 2 || gauges == 0 || other || len(sizes) == len(made) && len(sizes) > most {
		return
	}
	for i, text := range made {
		n.set(i, text)
	}
}
