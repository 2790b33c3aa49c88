// SPDX-License-Identifier: Apache-2.0
package sillbook.store;

/** The double keeps the contract too, so that what is tested over it means something. */
class MemoryStorageTest extends StorageContract {
    private final Storage storage = new MemoryStorage();

    @Override
    protected Storage storage() {
        return storage;
    }
}
