#pragma once

#include "app/pages/rigged_today/control_check_presenter.h"

#include <QWidget>

#include <array>

class QComboBox;
class QKeyEvent;
class QLabel;

namespace rig {

class MeasureCard;

// What is measured on one surface: free play, up and down, beside the manual and beside the other side.
class FigureSection : public QWidget
{
    Q_OBJECT

public:
    explicit FigureSection(QWidget* parent = nullptr);

    // Another surface: what was typed goes, and its own unit is chosen.
    void begin(const Surface& surface);
    void display(const SurfaceSheet& sheet, bool open);
    void refuse(MeasureKind kind, const QString& sentence);
    void taken(MeasureKind kind); // what was typed is kept, or it belongs to another surface
    // The letter of a figure leads to its line, Enter takes what is typed there.
    bool takeKey(const QKeyEvent& event);
    QWidget* placeOf(MeasureKind kind) const;

signals:
    void typed(rig::MeasureKind kind, rig::DeflectionUnit unit, const QString& figure);
    void unitChosen();
    void lineOpened(rig::MeasureKind kind);

private:
    MeasureCard* card(MeasureKind kind) const { return m_cards[static_cast<std::size_t>(kind)]; }
    DeflectionUnit unitFor(MeasureKind kind) const;
    bool takeEnter();
    void showCard(MeasureKind kind, const SurfaceSheet& sheet, bool open);

    bool m_open = false;
    QComboBox* m_unit = nullptr;
    std::array<MeasureCard*, 3> m_cards{};
    QLabel* m_ratio = nullptr;
    QLabel* m_sides = nullptr;
};

} // namespace rig
