/** What lives in a stream and what it tells of the water: families, indices, kinds. Pure; knows nobody. */
package org.tankrounds.stream;
