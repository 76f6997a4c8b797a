package stamped

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/runline"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// wire is what a line tells; "" where it does not say it.
type wire struct {
	from, to, colour, size, signal, note string
	aside                                string // words that only lead to one of these, "New wire", "thats the"
	later                                []int  // lines further down that say something else of it
}

// wireOf reads a line behind its stamp: two ends with a word for a cavity in each, or plain ones, and a colour or a size; signs part the
// pieces. ok is false for any other.
//
//	New wire: lift pump, from DB1 terminal 4 to LP1 pin 1, 2.5 mm2, red.
//	dash plug pin 2 to relay box pin 86. white 20awg. thats the fan trigger
func wireOf(text string) (w wire, ok bool) {
	const longest = 200 // bytes (no source)
	if len(text) > longest || strings.HasSuffix(text, "?") {
		return w, false
	}
	if lead, rest, cut := strings.Cut(text, ": "); cut && len(strings.Fields(lead)) < 4 && !isEnd(lead) {
		if text = rest; announces(lead) {
			w.aside = strings.TrimSpace(lead)
		} else {
			w.signal = strings.TrimSpace(lead)
		}
	}
	for _, sign := range []string{"; ", ". ", " – ", " - "} {
		text = strings.ReplaceAll(text, sign, ", ")
	}
	for p := range strings.SplitSeq(strings.TrimRight(text, ". "), ", ") {
		w.take(strings.TrimSpace(p))
	}
	return w, w.from != "" && w.to != "" && (w.colour != "" || w.size != "")
}

// take takes in one piece of a line.
func (w *wire) take(p string) {
	if p == "" {
		return
	}
	if w.from == "" {
		bare := p
		var said []string
		for first, rest, ok := strings.Cut(bare, " "); ok && (announces(first) || isFrom(first)); first, rest, ok = strings.Cut(bare, " ") {
			if bare = rest; !isFrom(first) {
				said = append(said, first)
			}
		}
		if runline.IsPlain(bare) {
			w.aside = value.JoinNonEmpty(" ", w.aside, strings.Join(said, " "))
			from, to, rest := runline.Part(bare)
			w.from, w.to = asEnd(from), asEnd(to)
			for k, into := range []*string{&w.colour, &w.size, &w.note, &w.signal} {
				if k < len(rest) && rest[k] != "" && *into == "" {
					*into = rest[k]
				}
			}
			return
		}
	}
	colour, size := point.WireValues(p)
	if g, sized := value.ParseGauge(p, value.BareAWG, value.MarkUnknown); colour == "" && sized && g.Size != "" && value.HasDigit(p) &&
		strings.Trim(p, "0123456789.,") != "" {
		size = p
	}
	switch {
	case (colour != "" || size != "") && (colour == "" || w.colour == "") && (size == "" || w.size == ""):
		if colour != "" {
			w.colour = colour
		}
		if size != "" {
			w.size = size
		}
	case w.signal == "" && len(strings.Fields(p)) < 7:
		w.signal = withoutPointing(p)
		w.aside = value.JoinNonEmpty(" ", w.aside, strings.TrimSpace(strings.TrimSuffix(p, w.signal)))
	default:
		w.note = value.JoinNonEmpty("; ", w.note, p)
	}
}

// isFrom reports whether a word says that the near end follows.
func isFrom(w string) bool {
	return slices.Contains([]string{"from", "von", "vom", "de", "desde", "da", "van", "fran", "fra"}, table.Fold(w))
}

// asEnd writes an end with a colon before its cavity, "DB1 terminal 4" as "DB1:4".
func asEnd(text string) string {
	if of, pin, ok := name.SplitEnd(text); ok {
		return of + ":" + pin
	}
	return text
}

// isEnd reports whether a text is an end, so that the colon behind it is none of a lead.
func isEnd(text string) bool {
	_, pin, ok := name.SplitEnd(text)
	return ok && name.IsCavity(pin)
}

// announcing are words for a wire and for laying it, folded. From memory, no source.
var announcing = strings.Fields(`new wire wires lead cable added add fitted ran run pulled laid put in made next another also and
			a the neue neuer neu leitung ader draht kabel gelegt eingezogen noch eine nouveau fil cable pose ajoute encore un hilo nuevo cable
			nuevo puesto otro filo nuovo cavo posato altro nieuwe draad gelegd ny ledning trukket`)

// announces reports whether the words before a colon only say that a wire follows, "New wire", "Added", "Neue Leitung".
func announces(lead string) bool {
	return !slices.ContainsFunc(strings.Fields(table.Fold(lead)), func(w string) bool {
		return !slices.Contains(announcing, w)
	})
}

// withoutPointing takes off a name what only points at it, "thats the main feed".
func withoutPointing(text string) string {
	for _, lead := range []string{"thats the ", "that's the ", "that is the ", "this is the ", "its the ", "it's the ", "it is the ",
		"das ist der ", "das ist die ", "das ist das ", "c'est le ", "c'est la ", "es el ", "es la ", "e il ", "dat is de ", "for the ",
		"for "} {
		if len(text) > len(lead) && strings.EqualFold(text[:len(lead)], lead) {
			return text[len(lead):]
		}
	}
	return text
}
