// Package set makes the pages of the shop's set that are of no branch and no connector: the traveller
// that goes with one harness and is signed, the drawing, the kit, the cut list, what is threaded on,
// and the spares card. Each is a function of the sheet that gives blocks; ui/paper puts them in order.
package set
