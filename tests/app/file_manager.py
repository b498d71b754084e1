# SPDX-FileCopyrightText: Benchfold contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""A file manager that only listens: freedesktop.org's interface org.freedesktop.FileManager1, on the
bus of the test."""

import threading

from gi.repository import Gio, GLib

NAME = 'org.freedesktop.FileManager1'
INTERFACE = f'''
<node><interface name="{NAME}">
  <method name="ShowItems"><arg type="as" direction="in"/><arg type="s" direction="in"/></method>
</interface></node>'''


class FileManager:
    """shown: the addresses that it was asked to show, in order."""

    def __init__(self):
        self.shown = []
        context = GLib.MainContext()
        ready = threading.Event()

        def listen():
            context.push_thread_default()
            bus = Gio.bus_get_sync(Gio.BusType.SESSION)
            about = Gio.DBusNodeInfo.new_for_xml(INTERFACE).interfaces[0]
            bus.register_object('/org/freedesktop/FileManager1', about, self._called, None, None)
            Gio.bus_own_name_on_connection(bus, NAME, Gio.BusNameOwnerFlags.NONE,
                                           lambda *_: ready.set(), None)
            GLib.MainLoop(context).run()

        threading.Thread(target=listen, daemon=True).start()
        ready.wait(10)

    def _called(self, bus, sender, path, interface, method, parameters, invocation):
        self.shown += parameters.unpack()[0]
        invocation.return_value(None)
