package wirelist_test

import "strings"

// tongueWords are the words for the short forms of lists in other languages, by the beginning of their names, as a dictionary has them.
var tongueWords = map[string]string{
	"ln01-": "zw=black gs=grey bl=blue br=brown gn=green ge=yellow wt=white",
	"ln02-": "ng=black mr=brown bl=white az=blue rj=red íd.=ditto lo_mismo=ditto",
	"ln03-": "JA=yellow BE=blue NO=black OR=orange BA=white RG=red réserve=reserve",
	"ln04-": "sin=blue pun=red kevi=yellow/green vi=green mus=black va=white varalla=spare",
	"ln06-": "biał.=white brąz.=brown czerw.=red",
	"ln12-": "W=white Bl=blue S=grey Br=brown",
	"ln07-": "gu=yellow br=brown bl=blue sv=black vi=white gn=green lila=violet",
	"pn01-": "R=red N=black Bi=white M=brown Az=light_blue V=green libero=free Gr=grey",
	"pn02-": "rö=red sv=black gul=yellow blå=blue vit=white reserv=spare",
	"xc05-": "YR=yellow/red YU=yellow/blue NW=brown/white R=red",
	"pn03-": "vermelho=red preto=black cast=brown azul=blue enc=red",
}

// inTongue is a cell of such a list in words that are read.
func inTongue(list, cell string) string {
	for begins, all := range tongueWords {
		if !strings.HasPrefix(list, begins) {
			continue
		}
		words := map[string]string{}
		for pair := range strings.FieldsSeq(all) {
			short, word, _ := strings.Cut(pair, "=")
			words[strings.ReplaceAll(short, "_", " ")] = strings.ReplaceAll(word, "_", " ")
		}
		if word := words[cell]; word != "" {
			return word
		}
		parts := strings.FieldsFunc(cell, func(r rune) bool { return strings.ContainsRune(" /,;", r) })
		for i, p := range parts {
			if word := words[p]; word != "" {
				parts[i] = word
			}
		}
		if len(parts) < 3 && !strings.Contains(cell, " ") {
			return strings.Join(parts, "/")
		}
		return strings.Join(parts, " ")
	}
	return cell
}
