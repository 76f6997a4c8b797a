package value

import (
	"strconv"
	"strings"

	"contralay/model/catalogue"
	"contralay/model/wirelist/signs"
	"contralay/model/wirelist/squareword"
	"contralay/model/wirelist/strands"
	"contralay/model/wirelist/table"
)

// Gauge is what a gauge cell says: a size, and more where the cell holds a cable or
// a part number.
type Gauge struct {
	Spec       string // "AS22759/32"; "" where the cell names none
	Size       string // canonical, "22", "1/0" or "0.5mm2"; "" where it gives none
	Colour     Colour // of a part number
	Conductors int    // 0 where the cell does not count them
	Shielded   bool
	Twisted    bool
}

// Bare is how a whole number without unit in a gauge cell is read.
type Bare int

// A decimal number without unit is always mm²: no AWG size has decimals.
const (
	BareAWG Bare = iota
	BareMM2
)

// largestMM2 is the largest cross-section that is read, in mm²: what is more is no
// wire of a harness (ISO 6722-1 ends at 120).
const largestMM2 = 120

// ParseGauge reads a gauge cell: "22", "22 AWG", "AWG22", "22ga", "#22", "1/0",
// "0.5mm²", "0,5", "2x24 AWG shielded", "2 core 0.35 mm²", "M22759/32-22-9". ok is false
// where anything in it is not understood.
func ParseGauge(text string, bare Bare, mark Mark) (g Gauge, ok bool) {
	if IsPairMark(text) {
		return Gauge{}, false // its number is no size
	}
	if g, ok := parsePart(text); ok {
		return g, true
	}
	text = squareword.Plain(text)
	if size, _ := strands.Cut(text); size != "" {
		text = size
	}
	if as, ok := earthedCores(text); ok {
		text, bare = as, BareMM2
	}
	if spec, rest := CutSpec(text); spec.Spec != "" {
		if rest == "" {
			return spec, true
		}
		if _, metric := wireType(table.Fold(spec.Spec)); metric || spec.Spec == MetricSpec {
			bare = BareMM2
		} else if isMadeAWG(rest) {
			bare = BareAWG // "TXL 18" beside "35 mm²": the type says how its size is counted
		}
		g, ok = ParseGauge(rest, bare, mark)
		if ok = ok && g.Spec == "" && (spec.Size == "" || g.Size == "" || g.Size == spec.Size); !ok {
			return Gauge{}, false
		}
		if g.Spec, g.Colour = spec.Spec, spec.Colour; g.Size == "" {
			g.Size = spec.Size
		}
		return g, true
	}
	var in room
	all := scan(in[:0], table.Fold(text))
	size, metric, awg := "", false, false
	for i := 0; i < len(all); i++ {
		t := all[i]
		switch {
		case t.Kind == '0' && g.Conductors == 0 && size == "" && i+1 < len(all) && IsCount(all, i+1):
			n, err := strconv.Atoi(t.Text)
			if err != nil || n < 1 || n > 99 {
				return Gauge{}, false
			}
			g.Conductors = n
			i++
			if all[i].Kind == '-' {
				i++
			}
		case t.Kind == '0' && size == "":
			size = t.Text
		case t.Text == "sq" && i+1 < len(all) && all[i+1].Text == "mm", t.Text == "mm" && i+1 < len(all) && all[i+1].Text == "sq":
			metric = true
			i++
		case t.Text == "sq" && i+2 < len(all) && all[i+1].Kind == '.' && all[i+2].Text == "mm":
			metric = true
			i += 2
		case t.Text == "mm2" || t.Text == "qmm" || t.Text == "mmq" || t.Text == "sqmm":
			metric = true
		case t.Kind == '-' && size != "" && i+1 < len(all) && all[i+1].Text == "awg":
			// "12-AWG"
		case t.Text == "g" && awg:
			return Gauge{}, false // "gauge G, 20 AWG": a name
		case t.Text == "awg" || t.Text == "ga" || t.Text == "g" || t.Text == "gauge" || t.Text == "#":
			awg = true
		case !g.Cable(t.Text):
			return Gauge{}, false
		}
	}
	if metric && awg || size == "" && g.Conductors == 0 && !g.Shielded && !g.Twisted || size == "" && (metric || awg) {
		return Gauge{}, false
	}
	if size == "" {
		return g, true
	}
	g.Size, ok = canonical(size, metric, awg, bare, mark)
	return g, ok
}

// SizeAndColour parts "RED-22", "22 BLU" and "WHT-RED 20 AWG": a size at one end of a cell, and
// all the rest a colour.
func SizeAndColour(text string, bare Bare, lang string, mark Mark) (Gauge, bool) {
	text = strings.TrimSpace(text)
	open, in := strings.LastIndexByte(text, '('), ""
	if open > 0 && strings.HasSuffix(text, ")") { // "22 white (shielded)"
		in = text[open+1 : len(text)-1]
	} else if open = strings.LastIndex(text, ", "); open > 0 && strings.HasPrefix(table.Fold(text[open+2:]), "twist") { // "22, twisted"
		in = strings.TrimSpace(text[open+2:])
	}
	if in != "" {
		if of, ok := ParseGauge(in, bare, mark); ok && of.Size == "" && of.Spec == "" && of.IsCable() {
			if g, both := SizeAndColour(text[:open], bare, lang, mark); both {
				g.Conductors, g.Shielded, g.Twisted = of.Conductors, of.Shielded, of.Twisted
				return g, true
			}
		}
	}
	for i := 1; i < len(text); i++ {
		if !strings.ContainsRune(" -/,", rune(text[i])) {
			continue
		}
		front, back := strings.TrimSpace(text[:i]), strings.TrimSpace(text[i+1:])
		for _, try := range [][2]string{{front, back}, {back, front}} {
			if !strings.ContainsAny(try[0], "0123456789") || strings.ContainsAny(try[1], "0123456789") {
				continue
			}
			g, ok := ParseGauge(try[0], bare, mark)
			if !ok || g.Size == "" || g.IsCable() {
				continue
			}
			if c, ok := ParseColour(try[1], lang); ok && len(c) > 0 {
				g.Colour = c
				return g, true
			}
		}
	}
	return Gauge{}, false
}

// IsCount reports whether what follows a number makes it a count of conductors, not a size.
func IsCount(all []Token, i int) bool {
	if all[i].Kind == '-' && i+1 < len(all) {
		i++
	}
	switch all[i].Text {
	case "x", "core", "cores", "conductor", "conductors", "cond", "c", "adrig", "aderig", "poli", "brins", "conducteurs", "hilos",
		"conductores", "fili", "conduttori", "aderige", "adrige", "adriges", "adern", "draads", "leder", "ledere", "ledare", "lederet",
		"zylowy", "zylowa", "zylowe", "zyly", "zil", "zily", "zilovy", "johtiminen", "johdin", "eres", "condutores":
		return true
	}
	return false
}

// Cable takes in one word about how a cable is made; false where it is no such word.
func (g *Gauge) Cable(word string) bool {
	switch word {
	case "shielded", "screened", "shield", "screen", "shld", "shd", "sh", "scr", "scrn", "geschirmt", "gesch", "abgeschirmt", "abgesch",
		"schirm", "blinde", "blindee", "blindage", "ecrante", "apantallado", "apantallada", "schermato", "schermata",
		"geschirmte", "geschirmtes", "ecrantee", "apantallados", "schermati", "blindado", "blindada", "blindados", "blindagem",
		"afgeschermd", "afgeschermde", "afscherming", "ekranowany", "ekranowana", "ekranowane", "stineny", "stinena", "stinene", "stineni",
		"skarmad", "skarmat", "skarmade", "skjermet", "skaermet", "suojattu", "arnyekolt", "ecranat", "ecranata", "ekranli",
		"экранированный", "экранированная":
		g.Shielded = true
	case "twisted", "twist", "twisting", "twstd", "tw", "verdrillt", "verdrillen", "torsader", "trenzar", "twisten", "verdr", "torsade",
		"torsadee", "torsades", "torsadees", "trenzado", "trenzada", "trenzados", "trenzadas", "intrecciato", "intrecciati",
		"intrecciata", "krouceny", "kroucena", "kroucene", "skrecony", "skrecona", "skrecone", "tvinnad", "tvinnat", "snoet", "getwist",
		"getwiste", "torcido", "torcida", "torcidos", "trancado", "trancada", "trancados", "entrelacado", "entrelacados",
		"verdrillte", "verdrilltes", "intrecciate", "ritorto", "ritorta", "ritorti", "ritorte", "gedraaid",
		"kierretty", "sodrott", "csavart", "torsadat", "burgulu",
		"tvinnade", "snodd", "snoede", "verseilt", "tvunnet", "tvunnen", "krouceno", "entrancado", "entrancada", "витая", "витой":
		g.Twisted = true
	case "skretka", "skretki", "dvoulinka", "partvinnad", "partvinnat", "parsnodd", "parisnoet", "parikierretty", "doppino":
		g.Twisted, g.Conductors = true, max(g.Conductors, 2)
	case "tp", "utp", "twp":
		g.Twisted, g.Conductors = true, max(g.Conductors, 2)
	case "tsp", "stp", "tspr":
		g.Twisted, g.Shielded, g.Conductors = true, true, max(g.Conductors, 2)
	case "pair", "pr", "paar", "paire", "par", "coppia", "pari", "pereche", "erpar", "пара":
		g.Conductors = max(g.Conductors, 2)
	case "triple":
		g.Conductors = max(g.Conductors, 3)
	case "quad":
		g.Conductors = max(g.Conductors, 4)
	case "cable", "wire", "kabel", "leitung", ",", ";", ".", "+", "/", "(", ")", "and", "und":
	default:
		return false
	}
	return true
}

// canonical is the one spelling of a size.
func canonical(size string, metric, awg bool, bare Bare, mark Mark) (string, bool) {
	if size == "0" && !awg {
		return "", false // an empty cell of a spreadsheet as often as 1/0
	}
	if _, is := catalogue.AWGNumber(size); is && !metric && (awg || bare == BareAWG || strings.Contains(size, "/")) {
		return catalogue.CanonicalSize(size), true
	}
	if awg || strings.Contains(size, "/") || !metric && bare == BareAWG && !strings.ContainsAny(size, ".,") {
		return "", false
	}
	v, ok := mark.number(size)
	if !ok || v <= 0 || v > largestMM2 {
		return "", false
	}
	s := strconv.FormatFloat(v, 'f', -1, 64) + "mm2"
	_, ok = catalogue.MetricArea(s)
	return catalogue.CanonicalSize(s), ok
}

// parsePart reads an aerospace wire part number: M22759/32-22-9 is specification
// sheet 32, AWG 22, white; "-01" to "-04" are 1/0 to 4/0. From memory of the
// part number paragraph of the AS22759 sheets, not verified.
func parsePart(text string) (g Gauge, ok bool) {
	if strings.IndexByte(text, '/') < 0 {
		return Gauge{}, false
	}
	s := strings.ToLower(strings.ReplaceAll(text, " ", ""))
	for _, lead := range []string{"mil-w-", "mil-dtl-", "sae", "as", "m"} {
		s = strings.TrimPrefix(s, lead)
	}
	s, found := strings.CutPrefix(s, "22759/")
	parts := strings.Split(s, "-")
	if !found || len(parts) > 3 || parts[0] == "" || len(parts[0]) > 2 || strings.Trim(parts[0], "0123456789") != "" {
		return Gauge{}, false
	}
	g.Spec = "AS22759/" + parts[0]
	if len(parts) > 1 {
		size := parts[1]
		if len(size) == 2 && size[0] == '0' && size[1] >= '1' && size[1] <= '4' {
			size = size[1:] + "/0"
		}
		if _, is := catalogue.AWGNumber(size); !is {
			return Gauge{}, false
		}
		g.Size = catalogue.CanonicalSize(size)
	}
	if len(parts) > 2 {
		if g.Colour, ok = digitColour(parts[2]); !ok {
			return Gauge{}, false
		}
	}
	return g, true
}

// CutSpec takes the specification out of a gauge cell that has a size beside it: "22AWG
// M22759/16", "FLRY 0.5", "18 TXL", "ISO 6722 thin 0.5". FLRY is the name that ISO 6722 wire
// with a thin wall has in German lists (from memory, not verified); TXL, GXL and SXL are walls
// of SAE J1128.
func CutSpec(text string) (spec Gauge, rest string) {
	if !mayNameSpec(text) {
		return Gauge{}, text // as most texts
	}
	var left []string
	words := strings.Fields(text)
	for i := 0; i < len(words); i++ {
		w := words[i]
		g, ok := parsePart(strings.Trim(w, ",;()"))
		if name, n := specNamed(words[i:]); !ok && n > 0 {
			g, ok = Gauge{Spec: name}, true
			i += n - 1
		}
		if !ok || spec.Spec != "" {
			left = append(left, w)
			continue
		}
		spec = g
	}
	return spec, strings.Join(left, " ")
}

// mayNameSpec reports whether one of the words of a text can be a part number, or one that a specification begins with.
func mayNameSpec(text string) bool {
	if strings.IndexByte(text, '/') >= 0 {
		return true
	}
	for w := range strings.FieldsSeq(text) {
		first := plainWord(w)
		if first == "iso" || first == "sae" {
			return true
		}
		if _, n := specAlone(first); n > 0 {
			return true
		}
	}
	return false
}

// MetricSpec is the specification of mm² wires that state none.
const MetricSpec = "ISO 6722 thin"

// specNamed is the specification of the catalogue that some words begin with, by its name there
// or by the one word that lists have for it, and how many of the words name it; 0 where none do.
func specNamed(words []string) (name string, n int) {
	first := plainWord(words[0])
	if len(words) >= 3 && (first == "iso" || first == "sae") {
		whole := first + " " + plainWord(words[1]) + " " + plainWord(words[2])
		for _, name := range []string{MetricSpec, "SAE J1128 TXL", "SAE J1128 GXL", "SAE J1128 SXL"} {
			if whole == table.Fold(name) {
				return name, 3
			}
		}
	}
	return specAlone(first)
}

// plainWord is a word folded, without the signs round it.
func plainWord(w string) string { return table.Fold(roundWords.Trim(w)) }

// specAlone is the specification that one folded word names; n is 0 where it names none.
func specAlone(first string) (name string, n int) {
	switch first {
	case "flry", "flry-a", "flry-b", "flrya", "flryb":
		return MetricSpec, 1
	case "txl", "gxl", "sxl":
		return "SAE J1128 " + strings.ToUpper(first), 1
	}
	if is, _ := wireType(first); is {
		return strings.ToUpper(first), 1
	}
	return "", 0
}

// SizeWithin finds the one size with its unit in a text that is more than a gauge, "22 AWG
// high strand"; "" where there is none, or more than one. Of one size said both ways, "1.5mm²
// (16 AWG)", the first counts; a range of sizes is none of them.
func SizeWithin(text string, mark Mark) string {
	folded := strings.ReplaceAll(table.Fold(squareword.Plain(text)), "-gauge", " gauge")
	if !strings.Contains(folded, "mm") && !strings.Contains(folded, "awg") && !strings.Contains(folded, "ga") {
		return "" // no unit of sizes
	}
	if IsSizeRange(text) {
		return ""
	}
	var in room
	all := scan(in[:0], folded)
	found, inMetric := "", false
	for i := range all {
		if IsCount(all, i) && i > 0 && all[i-1].Kind == '0' {
			return "" // a cable, which is not one wire of its size
		}
		metric := all[i].Text == "mm2" || all[i].Text == "qmm" || all[i].Text == "mmq" || all[i].Text == "sqmm"
		awg := all[i].Text == "awg" || all[i].Text == "ga" ||
			all[i].Text == "gauge" && i > 0 && all[i-1].Kind == '0' && len(all[i-1].Text) == 2 // "22 gauge", and no fuel gauge
		if !metric && !awg {
			continue
		}
		size := ""
		switch {
		case i > 0 && all[i-1].Kind == '0':
			size = all[i-1].Text
		case awg && i+1 < len(all) && all[i+1].Kind == '0':
			size = all[i+1].Text
		}
		s, ok := canonical(size, metric, awg, BareAWG, mark)
		switch {
		case !ok, found != "" && found != s && inMetric == metric:
			return ""
		case found == "":
			found, inMetric = s, metric
		}
	}
	return found
}

// String prints a gauge in a way that ParseGauge reads as the same: a wire of a sheet of AS22759
// as its part number, all else in words, "ISO 6722 thin 0.5 mm²", "2 x 24 AWG shielded".
func (g Gauge) String() string {
	if g.isPart() {
		s := g.Spec
		if g.Size != "" {
			size := g.Size
			if n, zero := strings.CutSuffix(size, "/0"); zero {
				size = "0" + n
			}
			s += "-" + size
			if digits, ok := g.Colour.Digits(); ok && digits != "" {
				s += "-" + digits
			}
		}
		return s
	}
	var parts []string
	if g.Spec != "" {
		parts = append(parts, g.Spec)
	}
	if g.Conductors > 0 {
		parts = append(parts, strconv.Itoa(g.Conductors)+" x")
	}
	if n, metric := strings.CutSuffix(g.Size, "mm2"); metric {
		parts = append(parts, n+" mm²")
	} else if g.Size != "" {
		parts = append(parts, g.Size+" AWG")
	}
	if g.Shielded {
		parts = append(parts, "shielded")
	}
	if g.Twisted {
		parts = append(parts, "twisted")
	}
	return strings.Join(parts, " ")
}

// isPart reports whether a part number says all of the gauge: one wire of a sheet of AS22759,
// which has AWG sizes alone.
func (g Gauge) isPart() bool {
	return strings.HasPrefix(g.Spec, "AS22759/") && !g.IsCable() && g.Conductors == 0 && !strings.HasSuffix(g.Size, "mm2")
}

// IsCable reports whether g is of several wires or of one that is shielded or twisted.
func (g Gauge) IsCable() bool {
	return g.Conductors > 1 || g.Shielded || g.Twisted
}

// roundWords are signs round the words of a specification.
var roundWords = signs.Of(",;()")

// Equal compares two gauges.
func (g Gauge) Equal(o Gauge) bool {
	return g.Spec == o.Spec && g.Size == o.Size && g.Colour.Equal(o.Colour) && g.Conductors == o.Conductors &&
		g.Shielded == o.Shielded && g.Twisted == o.Twisted
}
