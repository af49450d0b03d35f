#pragma once

#include "app/blocks/blocks.h"
#include "core/plain_text.h"

#include <string>

// Small makers of what stands in a cell.
namespace rig {

inline CellText said(const QString& text, Role role = Role::Ink)
{
    CellText cell;
    cell.text = text;
    cell.role = role;
    return cell;
}

inline CellText softly(const QString& text)
{
    return said(text, Role::InkSoft);
}

inline CellText strongly(const QString& text, Role role = Role::Ink)
{
    CellText cell = said(text, role);
    cell.strong = true;
    return cell;
}

// One to tick by hand, with what it is about behind it.
inline CellText toTick(CellText cell)
{
    cell.box = true;
    return cell;
}

inline CellText pageOf(int place)
{
    CellText cell;
    cell.pageOf = place;
    return cell;
}

inline QString textOf(const std::string& text)
{
    return QString::fromStdString(text);
}

// Of a thing or a person, with what would fill pages left out in the middle.
inline QString printedName(const std::string& name)
{
    return textOf(elided(name, kMostPrinted));
}

} // namespace rig
