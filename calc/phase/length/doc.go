// Package length is the phase of cut lengths and mass.
package length
