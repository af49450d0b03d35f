#pragma once

#include "core/airframe/ids.h"

#include <QListWidget>
#include <QString>

#include <optional>
#include <vector>

namespace rig {

// The couplings of an airframe with how far each has come. The list chooses nothing by itself: the wrong
// coupling is a known way to spoil a reading.
class BaselineCouplings : public QListWidget
{
    Q_OBJECT

public:
    struct Row
    {
        CouplingId id;
        QString name;
        QString detail;
    };

    explicit BaselineCouplings(QWidget* parent = nullptr);

    void display(const std::vector<Row>& rows, std::optional<CouplingId> chosen);
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void focusInEvent(QFocusEvent* event) override;

signals:
    void couplingChosen(rig::CouplingId coupling);

private:
    std::vector<CouplingId> m_ids;
};

} // namespace rig
