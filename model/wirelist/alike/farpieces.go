package alike

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/words"
)

// farPieces parts lines of which each has one piece that begins with a word for where the wire goes or comes from, with other pieces
// around it; ok is false where less than four of five that are in use do,
// or where it is the last piece and none says "from": those are parted at the word "to".
//
//	red 16, from relay 87, main power        white 22, to crank sensor pin 1, crank signal
func farPieces(texts []string) (near, far []string, ok bool) {
	for _, mark := range []string{", ", "; ", " | ", " - ", " – ", " — "} {
		near, far = slices.Clone(texts), make([]string, len(texts))
		used, cut, behind, froms := 0, 0, 0, 0
		for i, t := range texts {
			if t == "" || name.StateOf(t) != name.Used {
				continue
			}
			used++
			var others []string
			ends := 0
			all := strings.Split(t, mark)
			for k := 0; k < len(all); k++ {
				p := all[k]
				if end, is := otherEnd(p); is && k > 0 {
					if last := len(all) - 1; k+1 == last && saysPin(strings.TrimSpace(all[last])) && isDevice(end) {
						end, all = withCavity(end, strings.TrimSpace(all[last])), all[:last] // "to Pump – +"
					}
					far[i] = end
					if ends++; k < len(all)-1 {
						behind++
					}
					if _, to := withoutTo(strings.TrimSpace(p)); !to {
						froms++
					}
				} else {
					others = append(others, p)
				}
			}
			if ends == 1 {
				near[i] = strings.Join(others, mark)
				cut++
			} else {
				far[i] = ""
			}
		}
		if cut > 1 && (5*cut >= 4*used && 2*behind > cut || cut == used && cut > 2 && froms > 0) {
			return near, far, true
		}
	}
	return nil, nil, false
}

// otherEnd takes the word off a piece that says that an end follows.
func otherEnd(text string) (end string, ok bool) {
	text = strings.TrimSpace(text)
	if end, ok = words.OtherEnd(text); !ok {
		end, ok = withoutTo(text)
	}
	return end, ok && end != "" && isShort(end)
}

// colouredSizes takes a number behind or before a colour for its size, "red 16", where the pieces at one place of most lines are so.
func colouredSizes(side [][]piece) bool {
	for at := range 4 { // places that are looked at (no source)
		lines, both, volts := 0, 0, 0
		for _, all := range side {
			if len(all) == 0 || len(all) == 1 && name.StateOf(all[0].text) != name.Used {
				continue
			}
			lines++
			if at < len(all) {
				if _, size := colourAndNumber(all[at].text); size != "" {
					both++
					if size == "12" || size == "24" {
						volts++
					}
				}
			}
		}
		if both < 2 || 5*both < 4*lines || volts == both { // "red 12" in each line is as likely a voltage
			continue
		}
		for _, all := range side {
			if at < len(all) {
				if colour, size := colourAndNumber(all[at].text); size != "" {
					all[at].colour, all[at].size = colour, size
				}
			}
		}
		return true
	}
	return false
}

// colourAndNumber parts a colour and a number that wires have as their gauge, in either order; size is "" where the text is no such.
func colourAndNumber(text string) (colour, size string) {
	if at := strings.LastIndexByte(text, ' '); at > 0 && isGauge(text[at+1:]) && point.IsColour(text[:at]) {
		return text[:at], text[at+1:]
	}
	if size, colour, ok := strings.Cut(text, " "); ok && isGauge(size) && point.IsColour(colour) {
		return colour, size
	}
	return "", ""
}
