package point

import (
	"slices"
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/commas"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// Marked is what a point says that begins with the mark of a cavity, "2A: green, to motor A"; Pad is "" where it is none.
type Marked struct{ Pad, Signal, Colour, Size, To, Note string }

// PartMarked parts "2A: green 22 AWG, to motor A" and "EN: not used".
func PartMarked(text string) (p Marked) {
	for _, mark := range []string{": ", " : ", " = ", " - ", " – "} {
		front, back, ok := strings.Cut(text, mark)
		front, back = name.WithoutPinWord(strings.TrimSpace(front)), strings.TrimSpace(back)
		if !ok || front == "" || back == "" || strings.Contains(front, " ") || len(front) > 8 || IsColour(front) && len(front) > 2 {
			continue
		}
		if name.StateOf(back) != name.Used {
			return Marked{Pad: front, Signal: back}
		}
		of, told := farLast(back)
		if !told {
			of = PartsOf(back)
		}
		if colour, size := WireValues(of.Signal); of.Colour == "" && colour != "" {
			of.Colour, of.Size, of.Signal = colour, size, ""
		}
		if of.Colour == "" || of.Signal != "" {
			return p
		}
		if of.To != "" {
			far, values := ValuesBehind(of.To)
			if len(values) == 1 && !IsColour(values[0]) && of.Size == "" { // "red, to PSU V+, 18 AWG"
				of.To, of.Size = far, values[0]
			}
		}
		return Marked{front, "", of.Colour, of.Size, of.To, of.Note}
	}
	return p
}

// farLast parts values and behind the last comma a far end in a tongue whose word for it is the article of another, "rojo 2,5 mm², a cuadro
// borne 4".
func farLast(text string) (p Parts, ok bool) {
	at := strings.LastIndex(text, ", ")
	if at < 0 {
		return p, false
	}
	place, ok := words.BehindGoesTo(text[at+len(", "):])
	if !ok || !IsShortName(place) || name.StateOf(place) != name.Used {
		return p, false
	}
	if colour, size := WireValues(text[:at]); colour != "" && !isEnglish(colour) {
		return Parts{Colour: colour, Size: size, To: place}, true
	}
	if values := commas.Parts(text[:at], ","); len(values) == 2 {
		colour, size := strings.TrimSpace(values[0]), strings.TrimSpace(values[1])
		if IsColour(colour) && !isEnglish(colour) && IsSized([]string{size}) {
			return Parts{Colour: colour, Size: size, To: place}, true
		}
	}
	return p, false
}

// isEnglish reports whether a colour begins with an English word: in English "a" is no word for where a wire goes.
func isEnglish(colour string) bool {
	word, _, _ := strings.Cut(colour, "/")
	word, _, _ = strings.Cut(table.Fold(word), " ")
	switch word {
	case "red", "black", "white", "blue", "green", "yellow", "grey", "gray", "brown", "pink", "purple", "orange", "violet", "tan",
		"light", "dark":
		return true
	}
	return len(word) < len("bleu") // a short form
}

// IsMark reports whether a word is a cavity, a pad or a pole.
func IsMark(w string) bool {
	return name.IsCavity(w) || arrow.IsPad(w) || strings.HasSuffix(w, "+") || strings.HasSuffix(w, "-") ||
		slices.Contains([]string{"plus", "minus", "pos", "neg", "positive", "negative"}, table.Fold(w))
}

// FarMarks are the far ends of some points: of each text before the last word, how many of these there are, and the last words
// that are the marks of such a device.
type FarMarks struct {
	devices map[string]int
	marks   map[string]bool
}

// MarksOf looks at some far ends.
func MarksOf(ends []string) (m FarMarks) {
	m.devices, m.marks = map[string]int{}, map[string]bool{}
	var all [][2]string
	seen := map[string]bool{}
	for _, to := range ends {
		if at := strings.LastIndexByte(to, ' '); at > 0 && !seen[to] && !name.SaysPin(to) {
			seen[to] = true
			device, mark := to[:at], to[at+1:]
			m.devices[device]++
			all = append(all, [2]string{device, mark})
		}
	}
	for _, e := range all {
		if m.devices[e[0]] > 1 && looksMarked(e[1]) {
			m.marks[e[1]] = true
		}
	}
	return m
}

// Part writes a colon before the mark of a device that has several, or that another device has too: "PSU V+", "X switch NC". Behind a
// word for a cavity the mark is parted later.
func (m FarMarks) Part(to string) string {
	if name.SaysPin(to) { // "tableau borne 4"
		return to
	}
	at := strings.LastIndexByte(to, ' ')
	if at < 0 || strings.Contains(to, ":") || !looksMarked(to[at+1:]) || m.devices[to[:at]] < 2 && !m.marks[to[at+1:]] {
		return to
	}
	return to[:at] + ":" + to[at+1:]
}

// looksMarked reports whether a word can be the mark of a cavity: short, and in capitals, or with a number or a sign.
func looksMarked(w string) bool {
	return len(w) <= 6 && (IsMark(w) || strings.ToUpper(w) == w)
}
