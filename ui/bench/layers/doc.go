// Package layers is the screens of the lay-up of a branch: layers, options, vacant places.
package layers
