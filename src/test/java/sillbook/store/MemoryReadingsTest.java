// SPDX-License-Identifier: Apache-2.0
package sillbook.store;

class MemoryReadingsTest extends ReadingsContract {
    private final MemoryStorage storage = new MemoryStorage();

    @Override
    protected Storage storage() {
        return storage;
    }
}
