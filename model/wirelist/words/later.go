package words

import (
	"strings"

	"contralay/model/wirelist/table"
)

// IsForLater reports whether what a cavity is called ends with a sign and a word that says it is not wired yet, "Flex fuel, later".
func IsForLater(called string) bool {
	f := strings.TrimRight(table.Fold(called), ".) ")
	at := strings.LastIndexAny(f, ",;(-")
	if at < 1 {
		return false
	}
	switch strings.TrimSpace(f[at+1:]) {
	case "later", "for later", "maybe later", "later on", "future", "in future", "not yet", "spater", "noch nicht", "plus tard",
		"pas encore",
		"mas tarde", "todavia no", "piu tardi", "non ancora", "nog niet", "pozniej", "senere", "senare":
		return true
	}
	return false
}

// roomWords are what a remark begins with that keeps a cavity for something. Common words, from memory, no source.
var roomWords = [...]string{"leave room", "leave space", "leave it free", "leave free", "keep room", "keep space", "keep it free",
	"make room", "room for ", "space for ", "provision for ", "for later", "for the future",
	"platz lassen", "platz frei", "platz fur ", "freilassen", "frei lassen", "freihalten", "frei halten", "fur spater",
	"laisser de la place", "laisser la place", "laisser libre", "garder libre", "place pour ", "pour plus tard",
	"dejar hueco", "dejar espacio", "dejar sitio", "dejar libre", "hueco para ", "sitio para ", "para mas tarde", "para mas adelante",
	"lasciare spazio", "lasciare posto", "lasciare libero", "posto per ", "per dopo", "per il futuro",
	"deixar espaco", "deixar livre", "ruimte laten", "ruimte voor ", "vrij laten", "vrij houden", "voor later",
	"lamna plats", "plats for ", "gor plads", "plads til ", "plass til ", "zostawic miejsce", "miejsce na ", "na pozniej", "nechat misto",
	"misto pro "}

// KeepsRoom reports whether a remark says that a cavity is kept for something, "leave room for later".
func KeepsRoom(remark string) bool {
	f := strings.TrimLeft(table.Fold(remark), "( ")
	for _, w := range roomWords {
		if strings.HasPrefix(f, w) {
			return true
		}
	}
	return false
}
