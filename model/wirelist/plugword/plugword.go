// Package plugword holds the words for a connector in the tongues of lists, "plug A", "stik A", "wtyk A".
//
// It knows words alone, folded; package name says what a title says.
package plugword

import (
	"strings"
	"sync"
)

// Is reports whether a folded word is one for a connector.
func Is(w string) bool { return all()[w] }

// all are the words. Common words, from memory, no source. Nothing writes it.
var all = sync.OnceValue(func() map[string]bool {
	m := map[string]bool{}
	for _, w := range strings.Fields(`connector plug socket receptacle header jack
		stecker buchse steckverbinder steckverbindung gegenstecker
		connecteur prise fiche embase
		conector enchufe
		connettore spina presa
		stekker contrastekker
		stik hunstik hanstik stikprop bosning plugg kontakt kontaktdon stickpropp uttag
		liitin pistoke
		konektor zastrcka zasuvka vidlice
		zlacze wtyczka wtyk gniazdo
		ficha tomada
		csatlakozo dugo aljzat
		konnektor soket
		mufa conectorul
		utikac uticnica
		разъем разъём соединитель штекер роз'єм`) {
		m[w] = true
	}
	return m
})
