package value

import (
	"math"
	"strconv"
	"strings"
)

// CutStrands takes the strands off a size that has them behind it in brackets, "4 (56/0.30)", "1.0 mm² (32 x 0.2)": how many there are and
// how thick each is, in mm. Together they have the area of the size, so that its number is of mm². size is "" where there are none, or
// where their area is another.
func CutStrands(text string, mark Mark) (size, strands string) {
	text = strings.TrimSpace(text)
	open := strings.LastIndexByte(text, '(')
	if open < 1 || !strings.HasSuffix(text, ")") {
		return "", ""
	}
	front, in := strings.TrimSpace(squared(text[:open])), strings.TrimSpace(text[open+1:len(text)-1])
	bare := in
	for _, unit := range []string{"mm", "strands", "str."} {
		bare = strings.TrimSpace(strings.TrimSuffix(bare, unit))
	}
	at := strings.IndexAny(bare, "/x×X*")
	if at < 1 {
		return "", ""
	}
	n, err := strconv.Atoi(strings.TrimSpace(bare[:at]))
	thick, ok := mark.number(strings.TrimSpace(strings.TrimLeft(bare[at:], "/x×X*")))
	if err != nil || !ok || n < 2 || n > 5000 || thick <= 0 || thick > 3 {
		return "", ""
	}
	number := front
	for _, unit := range []string{"mm2", "mm²", "qmm", "sqmm", "sq mm", "sq. mm"} {
		number = strings.TrimSpace(strings.TrimSuffix(number, unit))
	}
	area, ok := mark.number(number)
	const apart = 0.1 // of the area: 14 strands of 0.30 are 0.99 mm² and are sold as 1 (no source)
	if !ok || math.Abs(float64(n)*math.Pi/4*thick*thick-area) > apart*area {
		return "", ""
	}
	return number + " mm²", in
}
