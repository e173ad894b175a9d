#!/bin/sh
# Mounts a memory stick for the kiosk and gives it back. Run by systemd as root: the kiosk's user has no right to either.
#
#   stick.sh mount DEVICE     DEVICE without /dev/, such as sda1
#   stick.sh unmount
#
# A stick is never run from (noexec), never trusted with devices or rights (nodev, nosuid), and what is on it belongs to
# the kiosk's user alone while it is in use.
set -eu

place=/run/rackside-stick
asked=/run/rackside/stick-release

mount_stick() {
  device=/dev/$1
  [ -b "$device" ] || { echo "stick.sh: there is no $device" >&2; exit 1; }
  systemctl --quiet is-enabled rackside.service || exit 0 # no kiosk here: the stick is none of our business
  mountpoint -q "$place" && exit 0                        # one at a time; the first stays
  mkdir -p "$place"
  who="uid=$(id -u rackside),gid=$(id -g rackside),umask=0077"
  careful=nosuid,nodev,noexec,noatime
  case $(blkid -o value -s TYPE "$device") in
    vfat) mount -t vfat -o "$careful,flush,$who" "$device" "$place" ;;
    exfat) mount -t exfat -o "$careful,$who" "$device" "$place" ;;
    ext2 | ext3 | ext4)
      mount -o "$careful" "$device" "$place"
      # Such a stick has owners of its own; the kiosk gets one folder on it.
      mkdir -p "$place/rackside"
      chown rackside:rackside "$place/rackside"
      chmod 755 "$place"
      ;;
    *) echo "stick.sh: $device has no file system that is taken here (FAT, exFAT, ext4)" >&2; exit 1 ;;
  esac
}

unmount_stick() {
  if mountpoint -q "$place"; then
    sync -f "$place"
    umount "$place"
  fi
  rm -f "$asked"
}

case ${1:-} in
  mount) mount_stick "$2" ;;
  unmount) unmount_stick ;;
  *) echo "stick.sh: mount DEVICE, or unmount" >&2; exit 64 ;;
esac
